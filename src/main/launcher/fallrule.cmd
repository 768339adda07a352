@echo off
rem Runs Fallrule with settings of the Java machine that suit a short run; docs/performance.md says what each saves.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem FALLRULE_JAVA stands in place of the settings for short runs: "many" for those that suit thousands of plans, else its own.
if not defined FALLRULE_JAVA set "FALLRULE_JAVA=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:+IgnoreUnrecognizedVMOptions -XX:C1MaxInlineSize=20"
if "%FALLRULE_JAVA%"=="many" set "FALLRULE_JAVA=-XX:+UseParallelGC -XX:+IgnoreUnrecognizedVMOptions -XX:MaxInlineLevel=4 -XX:InlineSmallCode=500 -XX:FreqInlineSize=120 -XX:Tier4InvocationThreshold=20000 -XX:Tier4MinInvocationThreshold=4000 -XX:Tier4CompileThreshold=60000 -XX:Tier4BackEdgeThreshold=160000"
"%java%" -Xlog:disable "-XX:SharedArchiveFile=%~dp0fallrule.jsa" %FALLRULE_JAVA% -jar "%~dp0fallrule.jar" %*
