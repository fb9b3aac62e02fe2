@echo off
rem Starts Pressweek. Builds it first when there is no build yet; after a change of the sources, delete
rem app\target or run "mvn -DskipTests package".
setlocal enableextensions disabledelayedexpansion
set "home=%~dp0"

set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME if not exist "%java%" (
  >&2 echo pressweek: JAVA_HOME is "%JAVA_HOME%", which has no bin\java.exe; expected a JDK 17 or newer
  exit /b 2
)
if not defined JAVA_HOME (
  where /q java || (
    >&2 echo pressweek: no java found; expected a JDK 17 or newer in JAVA_HOME or on the PATH
    exit /b 2
  )
)

call :find_jar
if not defined jar call :build || exit /b 2
"%java%" -XX:+UseSerialGC -Xshare:auto -Xlog:disable -Xlog:all=warning:stderr -jar "%jar%" %*
exit /b %ERRORLEVEL%

:find_jar
set "jar="
if exist "%home%app\target\launch\lib\pressweek.jar" set "jar=%home%app\target\launch\lib\pressweek.jar"
if exist "%home%app\target\lib\pressweek.jar" set "jar=%home%app\target\lib\pressweek.jar"
exit /b 0

:build
where /q mvn || (
  >&2 echo pressweek: no mvn found to build with; expected Maven 3.8 or newer on the PATH
  exit /b 2
)
>&2 echo pressweek: building once, which takes up to a minute or two when Maven has to download
pushd "%home%"
call mvn -q -B -Dquick -Dmaven.test.skip=true -Denforcer.skip=true -pl app -am package 1>&2 <nul
if errorlevel 1 (
  popd
  >&2 echo pressweek: the build failed; its messages stand above
  exit /b 2
)
popd
call :find_jar
if not defined jar exit /b 2
exit /b 0
