using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text;
using AngleSharp.Html.Dom;
using Plumbmark.Inspection.Demo;
using Plumbmark.Testing.Fuzzing;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>Every form there is, filled in and then broken: fields spliced, missing, twice, of another form, files of another kind.</summary>
public static class BrokenForms
{
    private const int SentBeforeAFreshApp = 1500; // what was accepted makes the car grow, and every answer dearer
    private const double LongestMilliseconds = 1000;

    // Taken, shown again with what is wrong, or refused: by word of the page, of the server's limits, or of its guard.
    private static readonly int[] s_answers = [200, 302, 303, 400, 404, 409, 413, 415, 422, 429];

    /// <summary>What came of it.</summary>
    /// <param name="Forms">Forms there are.</param>
    /// <param name="Sent">Forms sent.</param>
    /// <param name="Taken">Forms that were taken.</param>
    /// <param name="Milliseconds">How long each took.</param>
    /// <param name="Findings">One for each kind of failure, with the first form that showed it.</param>
    public sealed record Outcome(int Forms, int Sent, int Taken, List<double> Milliseconds, IReadOnlyDictionary<string, string> Findings);

    private sealed record Form(string Action, bool HasFile, List<KeyValuePair<string, string>> Fields, List<string> Files);

    /// <summary>Sends that many forms; the same seed makes the same ones.</summary>
    public static async Task<Outcome> Run(int inputs, int seed)
    {
        var random = new Random(seed);
        var findings = new Dictionary<string, string>(StringComparer.Ordinal);
        var (forms, sent, taken, times) = (0, 0, 0, new List<double>());
        while (sent < inputs)
        {
            await using var app = await RunningApp.Start();
            using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = true })
            {
                BaseAddress = app.Client.BaseAddress,
            };
            var all = await FormsOf(app, client);
            forms = all.Count;
            for (var i = 0; i < SentBeforeAFreshApp && sent < inputs; i++, sent++)
            {
                var form = all[random.Next(all.Count)];
                using var body = Broken(form, all, random);
                var before = Entries(app);
                var (answer, text, milliseconds) = await Send(client, form.Action, body);
                times.Add(milliseconds);
                var status = (int)answer.StatusCode;
                taken += status is 200 or 302 or 303 ? 1 : 0;
                if (WhatIsWrong(status, text, milliseconds, isChanged: Entries(app) != before) is { } wrong)
                {
                    findings.TryAdd(wrong, $"{form.Action} {text[..Math.Min(300, text.Length)]}");
                }
            }
        }

        return new Outcome(forms, sent, taken, times, findings);
    }

    // A pause of the machine is not the app's: only what is slow again counts.
    private static async Task<(HttpResponseMessage Answer, string Text, double Milliseconds)> Send(
        HttpClient client,
        string to,
        HttpContent body
    )
    {
        var bytes = await body.ReadAsByteArrayAsync();
        for (var again = false; ; again = true)
        {
            var copy = new ByteArrayContent(bytes);
            copy.Headers.ContentType = body.Headers.ContentType;
            var began = Stopwatch.GetTimestamp();
            var answer = await client.PostAsync(to, copy);
            var text = await answer.Content.ReadAsStringAsync();
            var milliseconds = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
            if (again || milliseconds <= LongestMilliseconds)
            {
                return (answer, text, milliseconds);
            }
        }
    }

    private static string? WhatIsWrong(int status, string text, double milliseconds, bool isChanged) =>
        !s_answers.Contains(status) ? $"answered with {status}"
        : status >= 400 && isChanged ? $"refused with {status}, and the journal is changed"
        : status is 409 or 413 or 415 or 422 && text.Length < 20 ? $"refused with {status} without a word"
        : milliseconds > LongestMilliseconds ? "slower than a second"
        : null;

    private static (int Cars, int Entries) Entries(RunningApp app)
    {
        var cars = app.Journals.Cars();
        return (cars.Count, cars.Sum(c => c.Entries.Count));
    }

    private static async Task<List<Form>> FormsOf(RunningApp app, HttpClient client)
    {
        var car = app.Journals.Add(DemoCar.File());
        var forms = new Dictionary<string, Form>(StringComparer.Ordinal);
        foreach (var page in await EveryPage.Visit(client, car.Id))
        {
            foreach (var form in page.Document.Forms.Where(f => f.Method.Equals("post", StringComparison.OrdinalIgnoreCase)))
            {
                var action = form.GetAttribute("action")!;
                var files = form
                    .Elements.OfType<IHtmlInputElement>()
                    .Where(e => e.Type == "file")
                    .Select(e => e.GetAttribute("name")!)
                    .ToList();
                if (!action.EndsWith("/binning", StringComparison.Ordinal))
                {
                    forms.TryAdd(action, new Form(action, files.Count > 0, page.Filled(action), files));
                }
            }
        }

        return [.. forms.Values];
    }

    private static HttpContent Broken(Form form, List<Form> all, Random random)
    {
        var fields = form.Fields.ToList();
        for (var changes = 1 + random.Next(4); changes > 0; changes--)
        {
            Break(fields, all, random);
        }

        if (!form.HasFile)
        {
            return new FormUrlEncodedContent(fields);
        }

        var parts = new MultipartFormDataContent();
        foreach (var (name, value) in fields.Where(f => f.Key.Length > 0 && f.Key.All(c => c is > ' ' and < '\u007f' and not '"')))
        {
            parts.Add(new StringContent(value), $"\"{name}\"");
        }

        foreach (var name in form.Files)
        {
            var file = new ByteArrayContent(Upload(random));
            file.Headers.ContentType = new MediaTypeHeaderValue("application/octet-stream");
            parts.Add(file, name, "../file.json");
        }

        return parts;
    }

    // The token is left alone in most forms, or nothing would get past the guard.
    private static void Break(List<KeyValuePair<string, string>> fields, List<Form> all, Random random)
    {
        if (fields.Count == 0)
        {
            return;
        }

        var at = random.Next(fields.Count);
        var (name, value) = fields[at];
        if (name == "token" && random.Next(20) != 0)
        {
            return;
        }

        var other = all[random.Next(all.Count)].Fields;
        switch (random.Next(8))
        {
            case 0:
                fields.RemoveAt(at);
                break;
            case 1:
                fields.Add(new(name, Typed(random)));
                break;
            case 2 when other.Count > 0:
                fields.Add(other[random.Next(other.Count)]);
                break;
            case 3:
                fields[at] = new(name, "");
                break;
            case 4:
                fields[at] = new(name, Changed(Encoding.UTF8.GetBytes(value), random));
                break;
            default:
                fields[at] = new(name, Typed(random));
                break;
        }
    }

    // What somebody might type into any field, broken: a length, an angle, a serial number, a name, a line.
    private static string Typed(Random random)
    {
        var subject = FuzzSubjects.All[random.Next(4)];
        return Encoding.UTF8.GetString(new Mutator(subject.Good, subject.Words).Next(random));
    }

    private static string Changed(byte[] value, Random random) =>
        Encoding.UTF8.GetString(new Mutator([value], ["1/2", "in", "A.L", "on"]).Next(random));

    private static byte[] Upload(Random random)
    {
        var subject = FuzzSubjects.All[4 + random.Next(FuzzSubjects.All.Count - 4)];
        return random.Next(4) == 0 ? subject.Good[random.Next(subject.Good.Count)] : new Mutator(subject.Good, subject.Words).Next(random);
    }
}
