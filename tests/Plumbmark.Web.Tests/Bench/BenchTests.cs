using System.Net;
using System.Text;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Testing;
using SkiaSharp;

namespace Plumbmark.Web.Tests.Bench;

/// <summary>The bench without JavaScript: parts are laid down, measured, judged, carded, photographed and found again.</summary>
public sealed class BenchTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Part_IsLaid_Measured_AndJudged()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Bench", LengthUnit.Inch));
        var part = await app.Submit(
            await app.Get($"/cars/{car.Id}/bench"),
            $"/cars/{car.Id}/bench/parts",
            ("kind", "LowerWishbone"),
            ("side", "left"),
            ("made", "Pressed"),
            ("number", "51-0417")
        );
        var address = $"/cars/{car.Id}/bench/parts/lower-wishbone.L";
        Assert.Equal(address, part.Path);
        Assert.Contains("Nothing has been measured on it yet.", part.Text, StringComparison.Ordinal);
        part = await app.Submit(
            await app.Get($"{address}?measure=straightedge"),
            $"{address}/measures",
            ("dimension", "Top flange"),
            ("at1", "0"),
            ("gap1", "0"),
            ("at2", "5"),
            ("gap2", "0.19"),
            ("at3", "10"),
            ("gap3", "0 to 0.002")
        );
        Assert.Contains("straighten", part.Document.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Top flange is 0.1", part.Text, StringComparison.Ordinal);
        Assert.Contains("Test for cracks before and after", part.Text, StringComparison.Ordinal);
        var measure = Assert.IsType<Measure.Straightedge>(app.Journals.Car(car.Id)!.File.Parts.Items[0].Measures[0]);
        Assert.Equal("top-flange", measure.Dimension);
        Assert.Equal(0.002, measure.Gaps[2].Stops!.Value.Inches);

        var back = $"{address}/measures/m1/withdrawal";
        var refused = await app.Submit(await app.Get(back), back, ("reason", ""));
        Assert.Equal(422, refused.Status);
        part = await app.Submit(refused, back, ("reason", "the part had slipped"));
        Assert.Contains("taken back: the part had slipped", part.Text, StringComparison.Ordinal);
        Assert.Contains("measure again", part.Document.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("length", "dimension=pad height;value1=1.42;value2=1 27/64", "pad-height")]
    [InlineData("angle", "dimension=included angle;value1=7.5;value2=7 deg 30'", "included-angle")]
    [InlineData("straightedge", "dimension=flange;at1=0;gap1=0;at2=5;gap2=2 sheets;at3=10;gap3=.004 to .005", "flange")]
    [InlineData(
        "rods",
        "from=front eye;to=rear eye;span=6;near=9;far=9.01;fromFirst=2;fromSecond=2.01;toFirst=2;toSecond=2",
        "front-eye/rear-eye.twist"
    )]
    [InlineData(
        "heights",
        "faceX1=0;faceY1=0;faceHeight1=0;faceX2=4;faceY2=0;faceHeight2=0;faceX3=0;faceY3=2;faceHeight3=.002;dimension=pad height;x=5;y=1;height=1.2",
        "pad-height"
    )]
    [InlineData("bore", "bore=eye;mouth1=.7535;mouth2=.7515;deep1=.752;deep2=.751;mate=.748;mateIs=pin", "eye.clearance")]
    [InlineData("centres", "from=a;to=b;over=centre;value1=9 1/8", "a/b.centres")]
    [InlineData("back-to-back", "dimension=eye height;value1=-0.01", "eye-height")]
    [InlineData("spring", "load1=0 lbf;length1=11.3;load2=300 lbf;length2=9.9", "rate")]
    [InlineData("run-out", "dimension=run out;value1=0.004;value2=-0.001", "run-out")]
    public async Task EveryWayOfMeasuring_IsTaken(string kind, string fields, string dimension)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(WithPart());
        var address = $"/cars/{car.Id}/bench/parts/own-part.L";
        var typed = fields.Split(';').Select(f => f.Split('=')).Select(f => (f[0], f[1])).ToArray();
        var page = await app.Submit(await app.Get($"{address}?measure={kind}"), $"{address}/measures", typed);
        Assert.Equal(200, page.Status);
        var answer = BenchInspection.Of(app.Journals.Car(car.Id)!.File).Parts[0];
        Assert.Contains(answer.Dimensions, d => d.Value.Dimension == dimension);
        Assert.Equal("1", $"{app.Journals.Car(car.Id)!.File.Parts.Items[0].Measures.Count}");
    }

    [Theory]
    [InlineData("length", "dimension=;value1=1.4x", 2)]
    [InlineData("straightedge", "dimension=flange;at1=0;gap1=0", 1)]
    [InlineData("straightedge", "dimension=flange;at1=0;gap1=.005 to .004;at2=1;gap2=0;at3=2;gap3=0", 1)]
    [InlineData("rods", "from=a;to=a;span=0", 2)]
    [InlineData("spring", "load1=200;length1=9", 1)]
    [InlineData("angle", "dimension=lean;value1=steep", 1)]
    public async Task WhatIsNotUnderstood_IsToldBesideTheField_AndKept(string kind, string fields, int faults)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(WithPart());
        var address = $"/cars/{car.Id}/bench/parts/own-part.L";
        var typed = fields.Split(';').Select(f => f.Split('=')).Select(f => (f[0], f[1])).ToArray();
        var page = await app.Submit(await app.Get($"{address}?measure={kind}"), $"{address}/measures", typed);
        Assert.Equal(422, page.Status);
        Assert.Equal(faults, page.Document.QuerySelectorAll(".fault").Length);
        Assert.All(typed, t => Assert.Equal(t.Item2, page.Document.QuerySelector($"[name='{t.Item1}']")!.GetAttribute("value")));
        Assert.Empty(app.Journals.Car(car.Id)!.File.Parts.Items[0].Measures);
    }

    [Fact]
    public async Task Card_IsWritten_AndAPartIsFoundByItsNumber()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(WithPart());
        var card = $"/cars/{car.Id}/bench/parts/own-part.L/card";
        await app.Submit(
            await app.Get(card),
            card,
            ("name", "odd bracket"),
            ("kind", "Bracket"),
            ("made", "Cast"),
            ("source", "box 3"),
            ("number", "51-0417"),
            ("how", "Stamped"),
            ("seen-Corroded", "yes"),
            ("crackTest", "Dye"),
            ("happened", "blasted")
        );
        var part = app.Journals.Car(car.Id)!.File.Parts.Items[0];
        Assert.Equal("odd bracket", part.Card.Name);
        Assert.Equal(new CardNumber("51-0417", NumberMark.Stamped), part.Card.Numbers[0]);
        Assert.Equal([PartCondition.Corroded], part.Conditions);
        Assert.Equal(PartKind.Bracket, part.Kind);
        Assert.Equal(CrackMethod.Dye, part.ClearBy);
        Assert.Contains("odd bracket", (await app.Get($"/cars/{car.Id}/bench?find=510417")).Text, StringComparison.Ordinal);
        Assert.Contains("No part has “99”", (await app.Get($"/cars/{car.Id}/bench?find=99")).Text, StringComparison.Ordinal);
        var away = await app.Submit(
            await app.Get($"/cars/{car.Id}/bench/parts/own-part.L"),
            $"/cars/{car.Id}/bench/parts/own-part.L/removal"
        );
        Assert.Contains("No part is on the bench yet.", away.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photo_IsKeptWithoutItsPlace_AndOtherTypesAreRefusedInWords()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(WithPart());
        var address = $"/cars/{car.Id}/bench/parts/own-part.L";
        using var bitmap = new SKBitmap(320, 200);
        using var jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        byte[] twelveMegabytes = [.. Jpegs.WithExif(jpeg.ToArray(), 6)];
        Array.Resize(ref twelveMegabytes, 12 * 1024 * 1024);
        var page = await Upload(app, address, twelveMegabytes, "IMG_1.jpg");
        Assert.Equal(200, page.Status);
        var photo = page.Document.QuerySelector(".bench-photo img")!.GetAttribute("src")!;
        var sent = await app.Client.GetAsync(photo, Stop);
        Assert.Equal("image/jpeg", sent.Content.Headers.ContentType!.MediaType);
        var bytes = await sent.Content.ReadAsByteArrayAsync(Stop);
        Assert.DoesNotContain(Jpegs.Whereabouts, Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        using var seen = SKBitmap.Decode(bytes);
        Assert.Equal((200, 320), (seen.Width, seen.Height));

        page = await Upload(app, address, "%PDF-1.7 not a picture"u8.ToArray(), "photo.jpg");
        Assert.Equal(422, page.Status);
        Assert.Contains("Found a PDF; a JPEG or PNG picture is needed", page.Text, StringComparison.Ordinal);
        page = await Upload(app, address, new byte[(12 * 1024 * 1024) + 1], "large.jpg");
        Assert.Equal(422, page.Status);
        Assert.Contains("at most 12 MB", page.Text, StringComparison.Ordinal);

        var other = app.Journals.Add(WithPart());
        Assert.Equal(
            HttpStatusCode.NotFound,
            (await app.Client.GetAsync(photo.Replace($"/cars/{car.Id}/", $"/cars/{other.Id}/", StringComparison.Ordinal), Stop)).StatusCode
        );
        page = await app.Submit(await app.Get(address), $"{address}/photos/{photo[(photo.LastIndexOf('/') + 1)..]}/removal");
        Assert.Null(page.Document.QuerySelector(".bench-photo"));
    }

    [Fact]
    public async Task Undo_TakesBackAMeasure_AndStaysOnThePart()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(WithPart());
        var address = $"/cars/{car.Id}/bench/parts/own-part.L";
        var page = await app.Submit(
            await app.Get($"{address}?measure=length"),
            $"{address}/measures",
            ("dimension", "length"),
            ("value1", "1.42")
        );
        page = await app.Submit(page, $"/cars/{car.Id}/undos");
        Assert.Equal(address, page.Path);
        Assert.Empty(app.Journals.Car(car.Id)!.File.Parts.Items[0].Measures);
        page = await app.Submit(page, $"/cars/{car.Id}/undos");
        Assert.Single(app.Journals.Car(car.Id)!.File.Parts.Items[0].Measures);
    }

    [Fact]
    public async Task Demo_WrongTypeOfLever_IsNotCalledBent()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/bench/parts/lever.L");
        Assert.Contains("It is not bent: it is the early lever", page.Text, StringComparison.Ordinal);
        Assert.Contains("early lever, not fitted to this car", page.Text, StringComparison.Ordinal);
        Assert.Contains("Decided by pad height.", page.Text, StringComparison.Ordinal);
        Assert.Contains("never straighten", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Types_AreDescribed_Changed_Refused_AndStruckOut()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Bench", LengthUnit.Inch));
        var types = $"/cars/{car.Id}/bench/types";
        var page = await app.Submit(
            await app.Get(types),
            types,
            ("kind", "SteeringLever"),
            ("name", "late type"),
            ("from", "the first"),
            ("dimension1", "pad height"),
            ("nominal1", "tall")
        );
        Assert.Equal(422, page.Status);
        Assert.Equal(2, page.Document.QuerySelectorAll(".fault").Length);
        await app.Submit(page, types, ("from", "TX 4800"), ("nominal1", "1.20"), ("tolerance1", "0.01"), ("number", "51-0533"));
        var type = Assert.Single(app.Journals.Car(car.Id)!.File.Parts.Variants);
        Assert.Equal("late-type", type.Id);
        Assert.Equal("pad-height", type.Figures[0].Dimension);
        await app.Submit(await app.Get($"{types}?type=late-type"), types, ("nominal1", "1.21"));
        Assert.Equal(1.21, ((Amount.OfLength)app.Journals.Car(car.Id)!.File.Parts.Variants.Single().Figures[0].Nominal).Value.Inches);
        await app.Submit(await app.Get(types), $"{types}/late-type/removal");
        Assert.Empty(app.Journals.Car(car.Id)!.File.Parts.Variants);
    }

    private static CarFile WithPart() =>
        CarFile.Named("Bench", LengthUnit.Inch) with
        {
            Parts = new PartsSection([new Part("own-part.L", PartKind.Own)], []),
        };

    private static async Task<VisitedPage> Upload(RunningApp app, string address, byte[] bytes, string name)
    {
        var page = await app.Get(address);
        using var form = new MultipartFormDataContent();
        foreach (var (field, value) in page.Filled($"{address}/photos"))
        {
            form.Add(new StringContent(value), field);
        }

        form.Add(new ByteArrayContent(bytes), "photo", name);
        return await VisitedPage.Of(await app.Client.PostAsync($"{address}/photos", form));
    }
}
