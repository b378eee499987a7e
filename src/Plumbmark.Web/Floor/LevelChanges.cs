using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The level is read over the stands, on the floor and beside the plumb line.</summary>
internal static class LevelChanges
{
    public static IResult Read(CarRequest request)
    {
        var faults = new FieldFaults();
        var rows = LevelRows.Sent(request);
        var section = new LevelSection(
            [.. rows.Stands.Select((row, i) => StandOf(request, row, i, faults)).OfType<StandReading>()],
            [.. rows.Floor.Select((row, i) => FloorOf(request, row, i, faults)).OfType<FloorHeight>()],
            PlumbOf(request, faults)
        );
        foreach (var twice in section.Stands.GroupBy(s => s.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            var last = rows.Stands.ToList().FindLastIndex(r => r.Name == twice.Key);
            faults.Add($"stand-{last}-name", Say("level.fault.twice", twice.Key));
        }

        return faults.Any
            ? Show.Again<LevelPage>(LevelView.Of(request, faults))
            : request.Keep(request.Address("level"), new Act.LevelRead(section.IsEmpty ? null : section));
    }

    /// <summary>A stand without a height has not been read: it is left out, not taken as zero.</summary>
    private static StandReading? StandOf(CarRequest request, LevelRows.Row row, int i, FieldFaults faults)
    {
        if (row.Height.Length == 0)
        {
            return null;
        }

        var name = request.RequiredText($"stand-{i}-name", Say("level.a-name"), faults, most: 40);
        var (x, y, height) = PlaceOf(request, $"stand-{i}", faults);
        var should = request.OptionalLength($"stand-{i}-should", request.Car.File.Units, faults, LengthSign.MayBeNegative);
        return x is null || y is null || height is null ? null : new StandReading(name, x.Value, y.Value, height.Value, should);
    }

    private static FloorHeight? FloorOf(CarRequest request, LevelRows.Row row, int i, FieldFaults faults)
    {
        if (row.X.Length + row.Y.Length + row.Height.Length == 0)
        {
            return null;
        }

        var (x, y, height) = PlaceOf(request, $"floor-{i}", faults);
        return x is null || y is null || height is null ? null : new FloorHeight(x.Value, y.Value, height.Value);
    }

    private static (Length? X, Length? Y, Length? Height) PlaceOf(CarRequest request, string row, FieldFaults faults)
    {
        Length? Field(string name) => request.RequiredLength($"{row}-{name}", request.Car.File.Units, faults, LengthSign.MayBeNegative);
        return (Field("x"), Field("y"), Field("height"));
    }

    private static PlumbCheck? PlumbOf(CarRequest request, FieldFaults faults)
    {
        if (request.Field("plumb-length").Length + request.Field("plumb-gap").Length == 0)
        {
            return null;
        }

        var length = request.RequiredLength("plumb-length", request.Car.File.Units, faults);
        var gap = request.RequiredLength("plumb-gap", request.Car.File.Units, faults, LengthSign.MayBeNegative);
        if (length == Length.Zero)
        {
            faults.Add("plumb-length", Say("level.fault.no-length"));
        }

        return length is null || gap is null ? null : new PlumbCheck(length.Value, gap.Value);
    }
}
