@echo off
rem Opens the page in the browser: for a double click. No window stays open: javaw has none.
setlocal DisableDelayedExpansion
set "here=%~dp0"
set "java="
if exist "%here%runtime\bin\javaw.exe" set "java=%here%runtime\bin\javaw.exe"
if not defined java if exist "%JAVA_HOME%\bin\javaw.exe" set "java=%JAVA_HOME%\bin\javaw.exe"
if not defined java if not defined JAVA_HOME for %%J in (javaw.exe) do set "java=%%~$PATH:J"
if not defined java (
  echo No Java was found. Install Java 17 or later, or take the zip with a Java runtime.
  pause
  exit /b 3
)
start "" "%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "%here%lib\fingering.jar"
