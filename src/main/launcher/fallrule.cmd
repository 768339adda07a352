@echo off
rem Runs Fallrule with settings of the Java machine that suit a short run; docs/performance.md says what each saves.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem FALLRULE_JAVA, where it is set, stands in place of the settings for short runs.
if not defined FALLRULE_JAVA set "FALLRULE_JAVA=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:+IgnoreUnrecognizedVMOptions -XX:C1MaxInlineSize=20"
"%java%" -Xlog:disable "-XX:SharedArchiveFile=%~dp0fallrule.jsa" %FALLRULE_JAVA% -jar "%~dp0fallrule.jar" %*
