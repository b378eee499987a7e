using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Exchange;

/// <summary>
/// What an owner gives a club: book pages and measured dimensions without anything that tells whose car it is. It is a car file, so that anybody's program
/// reads it, and it holds a person's own words nowhere but in the book pages, which are written to be shared.
/// </summary>
/// <remarks>
/// Left out: the owner's name for the car, notes, labels, tool names, the names of readings, what was taken back, photos, sources and history of parts, the
/// press and the road. Kept: points, standing readings, limits without their notes, parts with their cast numbers and standing measures, book pages.
/// </remarks>
public static class ClubFile
{
    /// <summary>What the car is called when its owner chooses no other name.</summary>
    public static string UsualName => Texts.Say("exchange.club-file.a-car-for-comparison");

    /// <summary>The car as it may be given away.</summary>
    /// <param name="car">The car.</param>
    /// <param name="name">What it is to be called, chosen by its owner; null for <see cref="UsualName"/>.</param>
    /// <param name="keepsSerial">Whether its serial number goes along.</param>
    public static CarFile Of(CarFile car, string? name = null, bool keepsSerial = false)
    {
        var tools = car
            .Tools.Select((t, i) => (t.Id, Anonymous: Texts.Say("exchange.club-file.tool", i + 1)))
            .ToDictionary(t => t.Id, t => t.Anonymous, StringComparer.Ordinal);
        // A tool that is not among the tools means usual accuracy, and so does none.
        string? ToolFor(string? id) => id is null ? null : tools.GetValueOrDefault(id);
        var readings = car.StandingReadings.Select((r, i) => r with { Id = $"r{i + 1}", Tool = ToolFor(r.Tool), Note = null });
        var points = car.Frame.Points.Select(p => p with { Label = null, NominalDoubt = p.NominalDoubt is null ? null : "doubted" });
        return new CarFile(
            car.Units,
            new CarIdentity(name ?? UsualName, keepsSerial ? car.Car.Serial : null),
            [.. car.Tools.Select(t => t with { Id = tools[t.Id] })],
            new Frame([.. points], car.Frame.Limits is { } limits ? limits with { Note = null } : null),
            [.. readings]
        )
        {
            Parts = new PartsSection([.. car.Parts.Items.Select(p => Anonymous(p, ToolFor))], car.Parts.Variants),
            Book = car.Book,
        };
    }

    private static Part Anonymous(Part part, Func<string?, string?> toolFor) =>
        part with
        {
            Card = new PartCard(Numbers: part.Card.Numbers),
            Measures = [.. part.StandingMeasures.Select((m, i) => m with { Id = $"m{i + 1}", Tool = toolFor(m.Tool), Note = null })],
            Limits = [.. part.Limits.Select(l => l with { Note = null })],
        };
}
