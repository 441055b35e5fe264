@echo off
rem Starts the program: of a copy that was unpacked, or of a clone, which is built first where it has not been built.
rem Unlike the launcher for other systems it keeps no archive of classes for quick starts.
setlocal DisableDelayedExpansion
set "here=%~dp0.."
set "jar=%here%\lib\fingering.jar"
if exist "%here%\pom.xml" set "jar=%here%\target\fingering.jar"
if not exist "%jar%" if exist "%here%\pom.xml" (
  echo fingering: building Fingering with Maven, this once: about a minute, or 1>&2
  echo   several on a busy machine or where Maven downloads libraries first. 1>&2
  pushd "%here%\.."
  call mvn -q -B -Dmaven.test.skip=true package 1>&2
  if errorlevel 1 (
    popd
    echo fingering: Fingering could not be built; it needs JDK 17 and Maven. 1>&2
    exit /b 3
  )
  popd
)
set "java="
if exist "%here%\runtime\bin\java.exe" set "java=%here%\runtime\bin\java.exe"
if not defined java if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java if not defined JAVA_HOME for %%J in (java.exe) do set "java=%%~$PATH:J"
if not defined java (
  echo fingering: no Java was found; install Java 17 or later, or set JAVA_HOME to where it is. 1>&2
  exit /b 3
)
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "%jar%" %*
exit /b %errorlevel%
