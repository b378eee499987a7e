using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;

namespace Plumbmark.Load;

/// <summary>A phone with connections and cookies of its own, that sends what waiting.js would send.</summary>
internal sealed partial class Visitor(Uri address) : IDisposable
{
    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = true })
    {
        BaseAddress = address,
        Timeout = TimeSpan.FromMinutes(2),
    };
    private string _token = "";
    private string _mark = "";

    /// <summary>Adds a ladder frame of six pairs and gives its number.</summary>
    public async Task<int> AddCar(string name)
    {
        await Open("/");
        var answer = await _client.PostAsync("/cars", Form([("name", name), ("skeleton", "6"), ("units", "in"), ("limits", "practice")]));
        return int.Parse(answer.Headers.Location!.ToString().Split('/')[2]);
    }

    /// <summary>Shows a page; milliseconds until the whole of it is here.</summary>
    public async Task<double> Open(string path)
    {
        var clock = Stopwatch.StartNew();
        var answer = await _client.GetAsync(path);
        var html = await answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync();
        var took = clock.Elapsed.TotalMilliseconds;
        _token = WebUtility.HtmlDecode(Token().Match(html).Groups[1].Value);
        _mark = Mark().Match(html) is { Success: true } mark ? mark.Groups[1].Value : _mark;
        return took;
    }

    /// <summary>Sends a reading; milliseconds until the app has said that it is on the disk.</summary>
    public async Task<double> Keep(int car, string from, string to, string value, string note)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/cars/{car}/readings")
        {
            Content = Form([("kind", "plan"), ("from", from), ("to", to), ("value", value), ("note", note)]),
        };
        request.Headers.Add("Plumbmark-Waiting", _mark);
        var clock = Stopwatch.StartNew();
        var answer = await _client.SendAsync(request);
        var took = clock.Elapsed.TotalMilliseconds;
        return answer.StatusCode == HttpStatusCode.NoContent
            ? took
            : throw new InvalidOperationException($"{answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
    }

    public void Dispose() => _client.Dispose();

    private FormUrlEncodedContent Form((string, string)[] fields) =>
        new([
            KeyValuePair.Create("token", _token),
            KeyValuePair.Create("form", Guid.NewGuid().ToString("N")),
            .. fields.Select(f => KeyValuePair.Create(f.Item1, f.Item2)),
        ]);

    [GeneratedRegex("name=\"token\" value=\"([^\"]+)\"")]
    private static partial Regex Token();

    [GeneratedRegex("data-waits=\"([0-9a-f]+)\"")]
    private static partial Regex Mark();
}
