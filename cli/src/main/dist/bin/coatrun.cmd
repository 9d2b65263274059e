@echo off
rem Starts Coatrun. COATRUN_OPTS is passed to the JVM, for example: set COATRUN_OPTS=-Xmx4g
setlocal
set "COATRUN_LIB=%~dp0..\lib"

set "COATRUN_JAVA="
rem JAVA_HOME is often set with quotes around it.
set "COATRUN_HOME="
if defined JAVA_HOME set "COATRUN_HOME=%JAVA_HOME:"=%"
if defined COATRUN_HOME if exist "%COATRUN_HOME%\bin\java.exe" set "COATRUN_JAVA=%COATRUN_HOME%\bin\java.exe"
if not defined COATRUN_JAVA for %%J in (java.exe) do if not "%%~$PATH:J"=="" set "COATRUN_JAVA=%%~$PATH:J"
if not defined COATRUN_JAVA (
  echo coatrun: no Java found. Install a Java runtime, version 17 or newer, and put it on the PATH or set JAVA_HOME. 1>&2
  exit /b 1
)

rem Most runs are over before code compiled with all effort would pay for the compiling.
set "COATRUN_EFFORT=-XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=0.4"

"%COATRUN_JAVA%" -XX:+UseParallelGC -XX:-UsePerfData -XX:InitialRAMPercentage=5 -Xmn128m -XX:MaxTenuringThreshold=0 -Xlog:gc+ergo=off -Djdk.console=java.base %COATRUN_EFFORT% %COATRUN_OPTS% -cp "%COATRUN_LIB%\*" org.coatrun.cli.Main %*
exit /b %ERRORLEVEL%
