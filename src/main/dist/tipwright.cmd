@echo off
rem SPDX-License-Identifier: Apache-2.0
rem Starts Tipwright from its folder: tipwright.jar, lib and, where it is, runtime (a Java of its own).
setlocal
set "TIPWRIGHT_JAVA=%~dp0..\runtime\bin\java.exe"
if exist "%TIPWRIGHT_JAVA%" goto start

set "TIPWRIGHT_JAVA="
if defined JAVA_HOME goto home
for %%J in (java.exe) do set "TIPWRIGHT_JAVA=%%~$PATH:J"
if not defined TIPWRIGHT_JAVA goto missing
goto version

:home
set "TIPWRIGHT_JAVA=%JAVA_HOME%\bin\java.exe"
if not exist "%TIPWRIGHT_JAVA%" goto missing

rem The version: from the file beside Java, else in its own words.
:version
set "TIPWRIGHT_VERSION="
set "TIPWRIGHT_WORDS="
for %%J in ("%TIPWRIGHT_JAVA%") do set "TIPWRIGHT_WORDS=%%~dpJ..\release"
if not exist "%TIPWRIGHT_WORDS%" goto ask
for /f "usebackq tokens=1,2 delims==" %%A in ("%TIPWRIGHT_WORDS%") do if "%%A"=="JAVA_VERSION" set "TIPWRIGHT_VERSION=%%~B"
if defined TIPWRIGHT_VERSION goto compare

:ask
set "TIPWRIGHT_WORDS=%TEMP%\tipwright-%RANDOM%-%RANDOM%.txt"
"%TIPWRIGHT_JAVA%" -version >"%TIPWRIGHT_WORDS%" 2>&1
for /f "usebackq tokens=2,3" %%A in ("%TIPWRIGHT_WORDS%") do if "%%A"=="version" set "TIPWRIGHT_VERSION=%%~B"
del "%TIPWRIGHT_WORDS%"
if not defined TIPWRIGHT_VERSION goto missing

:compare
set "TIPWRIGHT_FEATURE=0"
for /f "tokens=1 delims=.-+_" %%N in ("%TIPWRIGHT_VERSION%") do set "TIPWRIGHT_FEATURE=%%N"
if %TIPWRIGHT_FEATURE% LSS 17 goto old

rem The quick compiler alone starts sooner; a search runs long enough for the thorough one.
:start
set "TIPWRIGHT_COMPILER=-XX:TieredStopAtLevel=1"
set "TIPWRIGHT_SHORT=-XX:-UseDynamicNumberOfCompilerThreads"
set "TIPWRIGHT_SHORT=%TIPWRIGHT_SHORT% -XX:Tier3BackEdgeThreshold=10000 -Dsun.reflect.inflationThreshold=100000"
set "TIPWRIGHT_SHORT=%TIPWRIGHT_SHORT% -Xms40m -Xmn24m -XX:SurvivorRatio=4"
if "%~1"=="" set "TIPWRIGHT_COMPILER=%TIPWRIGHT_COMPILER% %TIPWRIGHT_SHORT%"
if "%~1"=="check" set "TIPWRIGHT_COMPILER=%TIPWRIGHT_COMPILER% %TIPWRIGHT_SHORT%"
if "%~1"=="place" set "TIPWRIGHT_COMPILER=-XX:+TieredCompilation"
if "%~1"=="tolerance" set "TIPWRIGHT_COMPILER=-XX:+TieredCompilation"
"%TIPWRIGHT_JAVA%" -XX:+IgnoreUnrecognizedVMOptions -XX:+UseSerialGC %TIPWRIGHT_COMPILER% -XX:-UsePerfData -Dtipwright.annotations=true -jar "%~dp0..\tipwright.jar" %*
exit /b %ERRORLEVEL%

:missing
if not defined TIPWRIGHT_JAVA set "TIPWRIGHT_JAVA=PATH"
echo tipwright: no Java found at "%TIPWRIGHT_JAVA%"; install Java 17 or later, or set JAVA_HOME to its folder>&2
exit /b 3

:old
echo tipwright: "%TIPWRIGHT_JAVA%" is Java %TIPWRIGHT_VERSION%, too old; install Java 17 or later, or set JAVA_HOME to its folder>&2
exit /b 3
