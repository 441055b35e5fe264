@echo off
rem Starts the program; builds it first where it has not been built.
setlocal
set "here=%~dp0.."
set "jar=%here%\target\fingering.jar"
if not exist "%jar%" (
  echo fingering: building the program once; this takes a minute or two. 1>&2
  pushd "%here%\.."
  call mvn -q -B -DskipTests package 1>&2
  if errorlevel 1 (
    popd
    echo fingering: the program could not be built; it needs JDK 17 and Maven. 1>&2
    exit /b 3
  )
  popd
)
java -XX:+UseSerialGC -jar "%jar%" %*
exit /b %errorlevel%
