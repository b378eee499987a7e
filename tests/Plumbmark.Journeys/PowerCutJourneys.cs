using System.Net;
using System.Text.RegularExpressions;
using Plumbmark.Store;

namespace Plumbmark.Journeys;

/// <summary>The app is killed without warning in the middle of entry: what it had acknowledged is kept, once.</summary>
public sealed partial class PowerCutJourneys
{
    private const int Cuts = 4;
    private const int Seed = 20260;

    [Fact]
    public async Task Kill_InTheMiddleOfEntry_LosesNoAcknowledgedReading()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-cut-").FullName;
        var random = new Random(Seed);
        var acknowledged = new List<string>();
        var sent = 0;
        try
        {
            for (var cut = 0; cut < Cuts; cut++)
            {
                await using var app = await AppProcess.Start(folder, keepFolder: true);
                using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = true })
                {
                    BaseAddress = new Uri(app.Address),
                };
                var token = Token()
                    .Match(await client.GetStringAsync("/cars/1/floor", TestContext.Current.CancellationToken))
                    .Groups[1]
                    .Value;
                var killer = Task.Run(
                    async () =>
                    {
                        await Task.Delay(random.Next(200, 900), TestContext.Current.CancellationToken);
                        app.Kill();
                    },
                    TestContext.Current.CancellationToken
                );
                while (true)
                {
                    var note = $"sent {++sent}";
                    try
                    {
                        if ((await Send(client, WebUtility.HtmlDecode(token), note)).StatusCode == HttpStatusCode.SeeOther)
                        {
                            acknowledged.Add(note);
                        }
                    }
                    catch (HttpRequestException)
                    {
                        break;
                    }
                }

                await killer;
            }

            using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
            var kept = journals.Car(1)!.File.Readings.Select(r => r.Note).OfType<string>().ToList();
            Assert.True(acknowledged.Count > Cuts, $"Only {acknowledged.Count} readings were acknowledged: the test did not test.");
            Assert.Empty(acknowledged.Except(kept));
            Assert.Equal(kept.Count, kept.Distinct().Count());
            // At each cut, the one on its way may have been written before its answer was lost.
            Assert.InRange(kept.Count, acknowledged.Count, acknowledged.Count + Cuts);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Task<HttpResponseMessage> Send(HttpClient client, string token, string note) =>
        client.PostAsync(
            "/cars/1/readings",
            new FormUrlEncodedContent(
                new Dictionary<string, string>
                {
                    ["token"] = token,
                    ["form"] = note,
                    ["kind"] = "plan",
                    ["from"] = "B.L",
                    ["to"] = "C.R",
                    ["value"] = "30 1/16",
                    ["note"] = note,
                }
            )
        );

    [GeneratedRegex("name=\"token\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
