@echo off
rem Starts Plumbmark: builds it once, then hands over. "plumbmark" opens the app; "plumbmark VERB ..." runs a verb.
setlocal
set "root=%~dp0"
set "out=%root%src\Plumbmark\bin\Release\net10.0"
set "stamp=%out%\.built.end"

if not exist "%out%\plumbmark.dll" goto build
if not exist "%stamp%" goto build
rem Any source newer than the last build? Newest first, generated folders left out.
powershell -NoProfile -Command "$s=(Get-Item '%stamp%').LastWriteTimeUtc; $n=Get-ChildItem '%root%src','%root%schemas','%root%build','%root%Directory.Build.props','%root%Directory.Packages.props','%root%global.json' -Recurse -File | Where-Object { $_.FullName -notmatch '\\(bin|obj)\\' -and $_.LastWriteTimeUtc -gt $s } | Select-Object -First 1; if ($n) { exit 1 }"
if errorlevel 1 goto build
goto run

:build
where dotnet >nul 2>nul || goto nosdk
dotnet --list-sdks | findstr /b "10." >nul || goto nosdk
echo Building Plumbmark; this is done once and takes a minute or two. 1>&2
set DOTNET_CLI_TELEMETRY_OPTOUT=1
rem What turns the program into machine code beforehand; a platform or a feed without it gets the plain program.
dotnet restore "%root%build\precompiler\Precompiler.csproj" -v quiet -nologo >nul 2>nul || echo The compiler for a quick start could not be fetched. Plumbmark works without it; each start takes about half a second longer. 1>&2
dotnet build "%root%src\Plumbmark\Plumbmark.csproj" -c Release -v quiet -nologo 1>&2 || exit /b 70

:run
"%out%\plumbmark.exe" %*
exit /b %errorlevel%

:nosdk
echo Plumbmark needs the .NET 10 SDK, and it is not here. 1>&2
echo Get it from https://dotnet.microsoft.com/download/dotnet/10.0 or with: winget install Microsoft.DotNet.SDK.10 1>&2
echo Then run this again. 1>&2
exit /b 69
