using System.Net;
using System.Text.RegularExpressions;

namespace Plumbmark.Journeys;

/// <summary>What the running program says and whom it speaks to, seen from outside.</summary>
public sealed partial class SecretsJourneys
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Pages, changes, refusals and a failure: no cookie, token, key or typed text appears in what the program writes to its terminal.</summary>
    [Fact]
    public async Task WhatIsPrinted_HoldsNoSecret()
    {
        await using var app = await AppProcess.Start();
        var cookies = new CookieContainer();
        using var client = new HttpClient(new SocketsHttpHandler { CookieContainer = cookies }) { BaseAddress = new Uri(app.Address) };
        var token = WebUtility.HtmlDecode(Token().Match(await client.GetStringAsync("/cars/1/floor", Stop)).Groups[1].Value);
        const string typed = "typed-in-private";
        foreach (var sent in (string[])[token, "forged", $"{token}x"])
        {
            var fields = new Dictionary<string, string>
            {
                ["token"] = sent,
                ["name"] = typed,
                ["skeleton"] = "5",
                ["units"] = "in",
            };
            await client.PostAsync("/cars", new FormUrlEncodedContent(fields), Stop);
        }

        await client.GetAsync($"/cars/1/floor?note={typed}", Stop);
        await client.GetAsync($"/{typed}", Stop);
        var secrets = cookies.GetAllCookies().Select(c => c.Value).Append(token).Append(typed).ToList();
        Assert.True(secrets.Count > 2);
        app.Kill();
        var printed = await app.Everything();
        foreach (var secret in secrets)
        {
            Assert.DoesNotContain(secret, printed, StringComparison.Ordinal);
        }
    }

    /// <summary>While every kind of thing is asked of it, the process has no socket but those at the port it listens on.</summary>
    [Fact]
    public async Task Sockets_AreOnlyThoseThatCameIn()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Sockets of a process are read from /proc.");
        await using var app = await AppProcess.Start();
        var port = new Uri(app.Address).Port;
        using var client = new HttpClient { BaseAddress = new Uri(app.Address) };
        string[] paths =
        [
            "/",
            "/cars/1/floor",
            "/cars/1/sheet/frame.pdf",
            "/cars/1/extracts/workbook",
            "/cars/1/road",
            "/backup",
            "/phones",
            "/nothing",
        ];
        var seen = 0;
        foreach (var path in paths)
        {
            var answer = client.GetAsync(path, Stop);
            while (!answer.IsCompleted)
            {
                seen += OnlyAt(port, app.ProcessId);
            }

            (await answer).Dispose();
            seen += OnlyAt(port, app.ProcessId);
        }

        Assert.True(seen > paths.Length, "Hardly any socket was seen: the test did not test.");
    }

    /// <summary>How many internet sockets the process has; all of them must be at its own port.</summary>
    private static int OnlyAt(int port, int process)
    {
        var own = Inodes(process);
        var sockets = (
            from table in (string[])["tcp", "tcp6", "udp", "udp6", "raw", "raw6"]
            let file = $"/proc/{process}/net/{table}"
            where File.Exists(file)
            from line in File.ReadLines(file).Skip(1)
            let columns = line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            where own.Contains(columns[9])
            select (Table: table, Port: Convert.ToInt32(columns[1].Split(':')[1], 16), Line: line)
        ).ToList();
        Assert.All(sockets, s => Assert.True(s.Port == port && s.Table.StartsWith("tcp", StringComparison.Ordinal), s.Line));
        return sockets.Count;
    }

    private static HashSet<string> Inodes(int process)
    {
        var inodes = new HashSet<string>(StringComparer.Ordinal);
        foreach (var descriptor in Directory.EnumerateFileSystemEntries($"/proc/{process}/fd"))
        {
            try
            {
                if (new FileInfo(descriptor).LinkTarget is { } target && target.StartsWith("socket:[", StringComparison.Ordinal))
                {
                    inodes.Add(target[8..^1]);
                }
            }
            catch (IOException)
            {
                // Closed meanwhile.
            }
        }

        return inodes;
    }

    [GeneratedRegex("name=\"token\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
