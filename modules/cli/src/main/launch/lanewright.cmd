@echo off
rem Starts Lanewright on Windows. Needs Java 17 or newer, found by JAVA_HOME or on the PATH.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not defined LANEWRIGHT_JAVA set "LANEWRIGHT_JAVA=-Xmx1500m"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true %LANEWRIGHT_JAVA% -jar "%~dp0lib\lanewright-cli-0.1.0.jar" %*
exit /b %ERRORLEVEL%
