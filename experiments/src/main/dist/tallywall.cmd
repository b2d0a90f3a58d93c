@echo off
rem Starts Tallywall with the Java runtime that came with it, or else with that of this machine.
rem   JAVA_HOME            the Java to use where none came with it; otherwise the java on the PATH
rem   TALLYWALL_JAVA_OPTS  more options for Java, for example -Xmx512m
setlocal enableextensions disabledelayedexpansion

set "TALLYWALL_JAR=%~dp0lib\tallywall.jar"
if not exist "%TALLYWALL_JAR%" goto nojar

set "TALLYWALL_JAVA=%~dp0runtime\bin\java.exe"
if exist "%TALLYWALL_JAVA%" goto start

set "TALLYWALL_JAVA=java"
if not defined JAVA_HOME goto probe
set "TALLYWALL_JAVA=%JAVA_HOME%\bin\java.exe"
if not exist "%TALLYWALL_JAVA%" goto nohome

:probe
"%TALLYWALL_JAVA%" --enable-native-access=ALL-UNNAMED --version >nul 2>nul
if errorlevel 1 goto nojava

:start
"%TALLYWALL_JAVA%" -Xlog:disable -XX:+UseParallelGC %TALLYWALL_JAVA_OPTS% -jar "%TALLYWALL_JAR%" %*
exit /b %ERRORLEVEL%

:nojar
>&2 echo tallywall: "%TALLYWALL_JAR%" is missing; unpack the whole zip file again
exit /b 2

:nohome
>&2 echo tallywall: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it; set it to the folder of a Java 17 or newer, or clear it
exit /b 2

:nojava
>&2 echo tallywall: no Java 17 or newer found; install a Java runtime, or set JAVA_HOME to the folder of one
exit /b 2
