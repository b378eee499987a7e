using System.Net;
using System.Text.RegularExpressions;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>The program itself is killed (SIGKILL) while forms with readings come in; it is started again on the same file.</summary>
public static partial class ServerKills
{
    private const int KillsOnAFile = 20;

    /// <summary>What came of it.</summary>
    public sealed record Outcome(int Kills, int Acknowledged, int SentAgain, int Lost, int Twice);

    /// <summary>Kills it that many times.</summary>
    /// <param name="binary">plumbmark.dll, built.</param>
    /// <param name="kills">How often.</param>
    /// <param name="seed">Decides the moments.</param>
    public static async Task<Outcome> Run(string binary, int kills, int seed)
    {
        var random = new Random(seed);
        var total = new Outcome(0, 0, 0, 0, 0);
        while (total.Kills < kills)
        {
            var one = await OnOneFile(binary, Math.Min(KillsOnAFile, kills - total.Kills), random);
            total = new Outcome(
                total.Kills + one.Kills,
                total.Acknowledged + one.Acknowledged,
                total.SentAgain + one.SentAgain,
                total.Lost + one.Lost,
                total.Twice + one.Twice
            );
        }

        return total;
    }

    private static async Task<Outcome> OnOneFile(string binary, int kills, Random random)
    {
        using var folder = new Folder();
        var (acknowledged, again, sent) = (new List<string>(), 0, 0);
        string? pending = null;
        for (var kill = 0; kill < kills; kill++)
        {
            using (var app = await Served.Start(binary, folder))
            using (var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(app.Address) })
            {
                await DrawPoints(client);
                var token = WebUtility.HtmlDecode(Token().Match(await client.GetStringAsync("/cars/2/points")).Groups[1].Value);
                var killer = Task.Run(async () =>
                {
                    await Task.Delay(random.Next(100, 700));
                    app.Process.Kill();
                    await app.Process.WaitForExitAsync();
                });
                while (true)
                {
                    // What was not answered is sent again, as a browser's reload or a phone does.
                    again += pending is null ? 0 : 1;
                    pending ??= $"sent {++sent}";
                    try
                    {
                        var answer = await Send(client, token, pending);
                        if (answer.StatusCode == HttpStatusCode.SeeOther)
                        {
                            acknowledged.Add(pending);
                            pending = null;
                        }
                        else
                        {
                            throw new InvalidOperationException(
                                $"A form was refused with {(int)answer.StatusCode}: the campaign does not test."
                            );
                        }
                    }
                    catch (HttpRequestException)
                    {
                        break;
                    }
                }

                await killer;
            }
        }

        using var journals = Journals.Open(folder.Journal);
        var kept = journals.Car(2)!.File.Readings.Select(r => r.Note).OfType<string>().ToList();
        return new Outcome(kills, acknowledged.Count, again, acknowledged.Except(kept).Count(), kept.Count - kept.Distinct().Count());
    }

    private static async Task DrawPoints(HttpClient client)
    {
        var page = await client.GetStringAsync("/cars/2/points");
        if (page.Contains("A.L", StringComparison.Ordinal))
        {
            return;
        }

        var token = WebUtility.HtmlDecode(Token().Match(page).Groups[1].Value);
        await Post(
            client,
            "/cars/2/skeletons",
            new()
            {
                ["token"] = token,
                ["form"] = Guid.NewGuid().ToString("N"),
                ["skeleton"] = "5",
            }
        );
    }

    private static Task<HttpResponseMessage> Send(HttpClient client, string token, string note) =>
        Post(
            client,
            "/cars/2/readings",
            new()
            {
                ["token"] = token,
                ["form"] = note,
                ["kind"] = "plan",
                ["from"] = "A.L",
                ["to"] = "B.R",
                ["value"] = "30 1/16",
                ["note"] = note,
            }
        );

    private static Task<HttpResponseMessage> Post(HttpClient client, string to, Dictionary<string, string> fields) =>
        client.PostAsync(to, new FormUrlEncodedContent(fields));

    [GeneratedRegex("name=\"token\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
