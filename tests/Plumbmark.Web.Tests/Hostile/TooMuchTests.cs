using System.Diagnostics;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>Too much at once, or too little for too long (CWE-400): refused, and the app goes on for everybody else.</summary>
public sealed class TooMuchTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Body_TooLarge_IsRefused_BeforeItIsTaken()
    {
        await using var app = await RunningApp.Start();
        var here = app.Client.BaseAddress!;
        var answer = await RawRequest.Send(
            here,
            $"POST /cars HTTP/1.1\r\nHost: {here.Authority}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 99999999999\r\nConnection: close\r\n\r\nname=",
            Stop
        );
        Assert.Contains(RawRequest.StatusOf(answer), (int[])[400, 413]);
        Assert.Empty(app.Journals.Cars());
    }

    [Fact]
    public async Task Form_WithAHugeField_OrThousandsOfFields_IsRefused()
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        var huge = shed.Filled("/cars", ("name", new string('x', 5_000_000)));
        var many = shed.Filled("/cars").Concat(Enumerable.Range(0, 5000).Select(i => KeyValuePair.Create($"f{i}", "x")));
        foreach (var fields in new[] { huge, many })
        {
            var answer = await app.Client.PostAsync("/cars", new FormUrlEncodedContent(fields), Stop);
            Assert.InRange((int)answer.StatusCode, 400, 422);
        }

        Assert.Empty(app.Journals.Cars());
    }

    [Fact]
    public async Task Head_TooLong_IsRefused()
    {
        await using var app = await RunningApp.Start();
        var here = app.Client.BaseAddress!;
        var address = await RawRequest.Send(here, $"GET /{new string('a', 20_000)} HTTP/1.1\r\nHost: {here.Authority}\r\n\r\n", Stop);
        Assert.Contains(RawRequest.StatusOf(address), (int[])[0, 414]);
        var header = await RawRequest.Send(here, $"GET / HTTP/1.1\r\nHost: {here.Authority}\r\nX: {new string('a', 70_000)}\r\n\r\n", Stop);
        Assert.Contains(RawRequest.StatusOf(header), (int[])[0, 431]);
        Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync("/", Stop)).StatusCode);
    }

    [Fact]
    public async Task Head_Trickling_IsCutOff_AndOthersAreAnsweredMeanwhile()
    {
        await using var app = await RunningApp.Start(place => place with { HeadPatience = TimeSpan.FromSeconds(1) });
        var here = app.Client.BaseAddress!;
        var slow = Enumerable.Range(0, 20).Select(_ => Trickle(here, $"GET / HTTP/1.1\r\nHost: {here.Authority}\r\nX-Slow: ")).ToList();
        Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync("/", Stop)).StatusCode);
        foreach (var answer in await Task.WhenAll(slow))
        {
            Assert.Contains(answer, (int[])[0, 408]);
        }
    }

    [Fact]
    public async Task Body_Trickling_IsCutOff_AndNothingIsKept()
    {
        await using var app = await RunningApp.Start(place => place with { BodyPatience = TimeSpan.FromSeconds(1.5) });
        var here = app.Client.BaseAddress!;
        var answer = await Trickle(
            here,
            $"POST /cars HTTP/1.1\r\nHost: {here.Authority}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 5000\r\n\r\nname="
        );
        Assert.Contains(answer, (int[])[0, 408]);
        Assert.Empty(app.Journals.Cars());
    }

    [Fact]
    public async Task Crowd_FromTheNetwork_CannotShutTheOwnerOut()
    {
        await using var app = await RunningApp.StartOnLan();
        var network = new Uri(app.LanAddress!);
        var crowd = new List<TcpClient>();
        try
        {
            for (var i = 0; i < 900; i++)
            {
                var client = new TcpClient();
                crowd.Add(client);
                await Connect(client, network);
            }

            Assert.InRange(crowd.Count(c => c.Connected), 500, 900);
            Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync("/", Stop)).StatusCode);
        }
        finally
        {
            crowd.ForEach(c => c.Dispose());
        }
    }

    [Theory]
    [InlineData("photo.jpg", "image/jpeg", "<html><script>alert(1)</script></html>")]
    [InlineData("photo.svg", "image/svg+xml", "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>")]
    [InlineData("../../../photo.jpg", "image/jpeg", "GIF89a<script>alert(1)</script>")]
    [InlineData("photo.png", "image/png", "\u0089PNG\r\n\u001a\n<script>alert(1)</script>")]
    [InlineData("photo.jpg", "image/jpeg", "\u00ff\u00d8\u00ff<script>alert(1)</script>")]
    public async Task Photo_ThatIsNone_IsRefused_WhateverItCallsItself(string name, string type, string content)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(Inspection.Demo.DemoCar.File());
        var part = car.File.Parts.Items[0].Id;
        var page = await app.Get($"/cars/{car.Id}/bench/parts/{Uri.EscapeDataString(part)}");
        var action = page
            .Document.Forms.Select(f => f.GetAttribute("action")!)
            .Single(a => a.EndsWith("/photos", StringComparison.Ordinal));
        using var form = new MultipartFormDataContent();
        foreach (var (field, value) in page.Filled(action))
        {
            form.Add(new StringContent(value), field);
        }

        var file = new ByteArrayContent(Encoding.Latin1.GetBytes(content));
        file.Headers.ContentType = new MediaTypeHeaderValue(type);
        form.Add(file, "photo", name);
        var answer = await app.Client.PostAsync(action, form, Stop);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.All(Directory.GetFiles(app.Folder), f => Assert.StartsWith("plumbmark.db", Path.GetFileName(f), StringComparison.Ordinal));
    }

    private static async Task Connect(TcpClient client, Uri to)
    {
        try
        {
            await client.ConnectAsync(IPAddress.Parse(to.Host), to.Port, Stop);
        }
        catch (SocketException)
        {
            // One too many is reset at once.
        }
    }

    /// <summary>Sends a beginning and then a byte every now and then; the status of what comes back, 0 when it is only closed.</summary>
    private static async Task<int> Trickle(Uri to, string beginning)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Parse(to.Host), to.Port, Stop);
        await using var stream = client.GetStream();
        var rest = RawRequest.Rest(stream, Stop);
        var clock = Stopwatch.StartNew();
        try
        {
            await stream.WriteAsync(Encoding.ASCII.GetBytes(beginning), Stop);
            while (!rest.IsCompleted)
            {
                Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), "It was not cut off.");
                await Task.Delay(100, Stop);
                await stream.WriteAsync("x"u8.ToArray(), Stop);
            }
        }
        catch (IOException)
        {
            // Cut off in the middle of a byte: as it should be.
        }

        return RawRequest.StatusOf(await rest);
    }
}
