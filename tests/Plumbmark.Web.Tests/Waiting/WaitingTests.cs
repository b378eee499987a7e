using System.Net;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Store;
using SkiaSharp;

namespace Plumbmark.Web.Tests.Waiting;

/// <summary>What the server answers to a form that waited on a phone: kept, kept before, not taken, and nothing that could be mistaken for it.</summary>
public sealed class WaitingTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Post_SentTwice_IsAcknowledgedTwiceAndKeptOnce()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var fields = await Fields(app, car);
        var before = car.File.Readings.Count;
        for (var time = 0; time < 2; time++)
        {
            var answer = await Send(app, car, fields, Mark(car));
            Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
            Assert.StartsWith($"/cars/{car.Id}/floor", answer.Headers.GetValues("Plumbmark-Show").Single(), StringComparison.Ordinal);
        }

        Assert.Equal(before + 1, app.Journals.Car(car.Id)!.File.Readings.Count);
    }

    [Fact]
    public async Task Post_ThePlainFormAfterTheWaitingOne_IsKeptOnce()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var fields = await Fields(app, car);
        await Send(app, car, fields, Mark(car));
        var page = await VisitedPage.Of(await app.Client.PostAsync($"/cars/{car.Id}/readings", new FormUrlEncodedContent(fields), Stop));
        Assert.Contains("sent before and is kept once", page.Text, StringComparison.Ordinal);
        Assert.Equal(car.File.Readings.Count + 1, app.Journals.Car(car.Id)!.File.Readings.Count);
    }

    [Fact]
    public async Task Post_MeantForAnotherCar_ChangesNothing()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var answer = await Send(app, car, await Fields(app, car), Guid.NewGuid().ToString("N"));
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal(car.Sequence, app.Journals.Car(car.Id)!.Sequence);
    }

    [Fact]
    public async Task Post_WrongValue_IsToldWithItsSentence()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var answer = await Send(app, car, await Fields(app, car, value: "31 9/8"), Mark(car));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("not less than one", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FormToken_FromTheFreshPage_IsGoodForAFormOpenedBefore()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var fields = await Fields(app, car);
        fields.RemoveAll(f => f.Key == "token");
        Assert.Equal(HttpStatusCode.BadRequest, (await Send(app, car, fields, Mark(car))).StatusCode);
        fields.Add(KeyValuePair.Create("token", await app.Client.GetStringAsync("/form-token", Stop)));
        Assert.Equal(HttpStatusCode.NoContent, (await Send(app, car, fields, Mark(car))).StatusCode);
    }

    [Fact]
    public async Task TwoPhones_TheSamePair_BothAreKept()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        await Task.WhenAll(
            Send(app, car, await Fields(app, car, value: "31 1/2"), Mark(car)),
            Send(app, car, await Fields(app, car, value: "31 9/16"), Mark(car))
        );
        var kept = app.Journals.Car(car.Id)!.File.Readings.TakeLast(2).OfType<Reading.Plan>().ToList();
        Assert.Equal(["31 1/2", "31 9/16"], kept.Select(r => r.Value.AsTyped).Order());
        Assert.Equal(2, kept.Select(r => r.Id).Distinct().Count());
    }

    [Theory]
    [InlineData("bench/parts/arm.L?measure=length", "bench/parts/arm.L/measures", "dimension=lug to lug", "value1=11.01")]
    [InlineData("press/p1", "press/p1/bites", "travel=0.24", "set=0.065")]
    [InlineData("press/p1", "press/p1/crack-tests", "method=dye", "found=no")]
    [InlineData("road/wheels?kind=strings", "road/wheels", "ahead=60", "behind=60 1/8", "between=100")]
    [InlineData("bench/parts/arm.L", "bench/parts/arm.L/photos", "photo=")]
    [InlineData("points/A.R/story", "photos", "photo=")]
    public async Task Post_OfEveryKindThatWaits_TwiceFromOnePhone_OnceFromAnother_KeepsTwo(
        string page,
        string action,
        params string[] typed
    )
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        foreach (var (phone, kept) in new[] { (1, 1), (1, 1), (2, 2) })
        {
            var shown = await app.Get($"/cars/{car.Id}/{page}");
            Assert.Equal(Mark(car), shown.Form($"/cars/{car.Id}/{action}").GetAttribute("data-waits"));
            var fields = shown.Filled($"/cars/{car.Id}/{action}", [.. typed.Select(t => (t.Split('=')[0], t.Split('=')[1]))]);
            fields.RemoveAll(f => f.Key is "form" or "photo");
            fields.Add(KeyValuePair.Create("form", $"{phone}".PadLeft(32, '0')));
            using HttpContent content = typed is ["photo="] ? WithPhoto(fields, phone) : new FormUrlEncodedContent(fields);
            var answer = await Send(app, $"/cars/{car.Id}/{action}", content, Mark(car));
            Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
            Assert.StartsWith($"/cars/{car.Id}/", answer.Headers.GetValues("Plumbmark-Show").Single(), StringComparison.Ordinal);
            Assert.Equal(car.Entries.Count + kept, app.Journals.Car(car.Id)!.Entries.Count);
        }
    }

    private static MultipartFormDataContent WithPhoto(List<KeyValuePair<string, string>> fields, int phone)
    {
        var content = new MultipartFormDataContent();
        foreach (var (name, value) in fields)
        {
            content.Add(new StringContent(value), name);
        }

        using var bitmap = new SKBitmap(20 + phone, 10);
        bitmap.Erase(SKColors.Teal);
        content.Add(new ByteArrayContent(bitmap.Encode(SKEncodedImageFormat.Png, 100).ToArray()), "photo", "frame.png");
        return content;
    }

    private static string Mark(OpenCar car) => car.Entries[0].Entry.Id.ToString("N");

    private static async Task<List<KeyValuePair<string, string>>> Fields(RunningApp app, OpenCar car, string value = "31 1/2")
    {
        var page = await app.Get($"/cars/{car.Id}/floor");
        Assert.Equal(Mark(car), page.Form($"/cars/{car.Id}/readings").GetAttribute("data-waits"));
        var points = car.File.Frame.Points;
        return page.Filled($"/cars/{car.Id}/readings", ("from", points[0].Id), ("to", points[^1].Id), ("value", value));
    }

    private static Task<HttpResponseMessage> Send(RunningApp app, OpenCar car, List<KeyValuePair<string, string>> fields, string mark) =>
        Send(app, $"/cars/{car.Id}/readings", new FormUrlEncodedContent(fields), mark);

    private static async Task<HttpResponseMessage> Send(RunningApp app, string action, HttpContent content, string mark)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, action) { Content = content };
        request.Headers.Add("Plumbmark-Waiting", mark);
        return await app.Client.SendAsync(request, Stop);
    }
}
