using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>A phone on the home network: let in with the code, entering without a connection, shut out again.</summary>
/// <remarks>The home network is played by another address of this machine's own (127/8, RFC 1122 section 3.2.1.3).</remarks>
public sealed partial class PhoneJourneys(Browser browser)
{
    private const string Network = "127.0.0.2";

    [Fact]
    public async Task Phone_IsLetInWithTheCode_AndWhatItEntersAfterItWasShutOutWaits()
    {
        await using var app = await AppProcess.Start(lan: Network);
        var address = Address().Match(await app.Result("Phones in the home network")).Value;
        var code = (await app.Remark("Code for the first phone")).Split(' ')[^1];
        await app.Remark("travels unencrypted");

        // By the machine's own name in its network, because a browser trusts 127/8 as it would https.
        address = address.Replace(Network, $"{Environment.MachineName}.local", StringComparison.Ordinal);
        var phone = await browser.Open(app, address: address);
        await phone.GotoAsync("/cars/1/floor");
        Assert.False(await phone.EvaluateAsync<bool>("isSecureContext"));
        await phone.IsFitToUse();
        await phone.Picture("phones-stranger-360");
        await phone.FillAsync("#code", code);
        await phone.FillAsync("#name", "Garage phone");
        await phone.ClickAsync("button:text(\"Let it in\")");
        await Assertions.Expect(phone.Locator("h1")).ToHaveTextAsync("Shed");
        await FloorJourneys.AddCar(phone, "Barn find", pairs: "5");
        await WaitingJourneys.Enter(phone, "A.L", "B.R", "31 1/2");
        await Assertions.Expect(phone.Locator("#reading-r1")).ToBeVisibleAsync();

        var laptop = await browser.Open(app, width: 1280, height: 900);
        await laptop.GotoAsync("/");
        await laptop.ClickAsync("text=Phones: enter from the garage");
        await Assertions.Expect(laptop.Locator("main")).ToContainTextAsync("Garage phone");
        await laptop.ClickAsync("text=Let a phone in");
        await Assertions.Expect(laptop.Locator(".phones-code")).ToBeVisibleAsync();
        await laptop.IsFitToUse();
        await laptop.Picture("phones-laptop");

        await laptop.ClickAsync("text=Shut out");
        await Assertions.Expect(laptop.Locator("main")).ToContainTextAsync("None.");
        await WaitingJourneys.Enter(phone, "B.L", "C.R", "27 3/8");
        await Assertions
            .Expect(phone.Locator("#waiting [role=status]"))
            .ToContainTextAsync("not let in by the laptop any more. 1 reading waits");

        // Let in again, what waited goes by itself.
        var next = (await laptop.Locator(".phones-code").TextContentAsync())!;
        var again = await phone.Context.NewPageAsync();
        await again.GotoAsync("/");
        await again.FillAsync("#code", next);
        await again.FillAsync("#name", "Garage phone");
        await again.ClickAsync("button:text(\"Let it in\")");
        await Assertions.Expect(again.Locator("h1")).ToHaveTextAsync("Shed");
        await again.GotoAsync(phone.Url);
        await Assertions.Expect(again.Locator("#reading-r2")).ToContainTextAsync("27 3/8");
    }

    [Theory]
    [InlineData("8.8.8.8")]
    [InlineData("127.0.0.1")]
    [InlineData("0.0.0.0")]
    [InlineData("garage")]
    public async Task Lan_OnAnAddressThatIsNotOfAHomeNetwork_IsRefused(string address)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-lan-").FullName;
        var (code, _, remarks) = await AppProcess.Run(folder, "serve", "--data", Path.Combine(folder, "plumbmark.db"), "--lan", address);
        Assert.Equal(2, code);
        Assert.Contains($"Found \"{address}\" after --lan", remarks, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex(@"http://[0-9.]+:\d+")]
    private static partial Regex Address();
}
