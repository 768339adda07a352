@echo off
rem Runs Fallrule with settings of the Java machine that suit a short run; docs/performance.md says what each saves.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -Xlog:disable "-XX:SharedArchiveFile=%~dp0fallrule.jsa" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%~dp0fallrule.jar" %*
