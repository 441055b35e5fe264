@echo off
rem Opens the page in the browser: for a double click. No window stays open: javaw has none.
setlocal DisableDelayedExpansion
set "here=%~dp0"
set "java=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw.exe"
if exist "%here%runtime\bin\javaw.exe" set "java=%here%runtime\bin\javaw.exe"
start "" "%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "%here%lib\fingering.jar"
if errorlevel 1 (
  echo No Java was found. Install Java 17 or later, or take the zip with a Java runtime.
  pause
)
