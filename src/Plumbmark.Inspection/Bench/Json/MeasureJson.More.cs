using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

internal static partial class MeasureJson
{
    private static Measure? ReadRods(Fields fields, string id)
    {
        var (from, to) = Ends(fields);
        var span = fields.RequiredLength("span", LengthBound.Positive);
        var near = fields.OptionalLength("near", LengthBound.Positive);
        var far = fields.OptionalLength("far", LengthBound.Positive);
        var (fromHeights, fromWrong) = Pair(fields, "fromHeights");
        var (toHeights, toWrong) = Pair(fields, "toHeights");
        if (near is null != far is null || fromHeights is null != toHeights is null || (near is null && fromHeights is null && !fromWrong))
        {
            fields.Faults.Add(fields.Part, Texts.Say("bench.measure-json--more.rods-need-near-and-far"));
            return null;
        }

        return from is null || to is null || span is not { } s || fromWrong || toWrong
            ? null
            : new Measure.Rods(id, from, to, s, near, far, fromHeights, toHeights);
    }

    private static ((Length First, Length Second)? Pair, bool IsWrong) Pair(Fields fields, string name)
    {
        if (fields.Optional(name) is null)
        {
            return (null, false);
        }

        return Lengths(fields, name, LengthBound.Any, least: 2, most: 2) is { } two ? ((two[0], two[1]), false) : (null, true);
    }

    private static Measure? ReadBackToBack(Fields fields, string id)
    {
        var differences = Parts(fields, "differences", least: 1)?.Select(p => ReadDifference(fields.Item(p))).ToList();
        return differences is null || differences.Contains(null)
            ? null
            : new Measure.BackToBack(id, [.. differences.OfType<SideDifference>()]);
    }

    private static SideDifference? ReadDifference(Fields fields)
    {
        var dimension = fields.RequiredText("dimension");
        var value = fields.RequiredLength("value", LengthBound.Any);
        fields.RefuseOthers();
        return dimension is null || value is not { } v ? null : new SideDifference(dimension, v);
    }

    private static Measure? ReadSpring(Fields fields, string id)
    {
        var loads = Parts(fields, "loads", least: 1)?.Select(p => ReadLoadedLength(fields.Item(p))).ToList();
        return loads is null || loads.Contains(null) ? null : new Measure.SpringLoads(id, [.. loads.OfType<LoadedLength>()]);
    }

    private static LoadedLength? ReadLoadedLength(Fields fields)
    {
        var load = AmountPart.RequiredLoad(fields, "load");
        var length = fields.RequiredLength("length", LengthBound.Positive);
        fields.RefuseOthers();
        return load is null || length is not { } l ? null : new LoadedLength(load, l);
    }

    private static Measure? ReadRunOut(Fields fields, string id)
    {
        var dimension = fields.RequiredText("dimension");
        var readings = Lengths(fields, "readings", LengthBound.Any, least: 2);
        return dimension is null || readings is null ? null : new Measure.RunOut(id, dimension, readings);
    }
}
