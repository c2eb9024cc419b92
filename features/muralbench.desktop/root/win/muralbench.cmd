@echo off
rem Starts Muralbench: without arguments or with files the desktop, with a verb the work without a screen.
rem Needs Java 17 or newer: the one in the folder jre beside this script, in JAVA_HOME, or on the path.
setlocal
set "bin="
if defined JAVA_HOME set "bin=%JAVA_HOME%\bin\"
if exist "%~dp0jre\bin\java.exe" set "bin=%~dp0jre\bin\"
set "jar="
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "jar=%%f"
set "area=-Dosgi.configuration.area=@user.home/.muralbench/configuration"
for %%v in (demo new pieces sheets cuts check export -h --help -V --version) do if /i "%~1"=="%%v" goto work
start "" "%bin%javaw" "%area%" -jar "%jar%" -nosplash %*
exit /b 0
:work
"%bin%java" -XX:TieredStopAtLevel=1 -Djava.awt.headless=true "%area%" -jar "%jar%" -nosplash -data @none -application muralbench.cli.application %*
exit /b %errorlevel%
