using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>What a person calls a dimension: <c>pad-height</c> is "pad height", <c>front/rear.twist</c> is "twist between front and rear".</summary>
public static class DimensionWords
{
    /// <summary>The name in lower case, for the middle of a sentence.</summary>
    public static string Name(string dimension)
    {
        var dot = dimension.LastIndexOf('.');
        var (of, what) = dot < 0 ? (dimension, "") : (dimension[..dot], dimension[(dot + 1)..]);
        var plain = of.Replace('-', ' ').Replace('_', ' ');
        var pair = plain.Replace("/", " and ", StringComparison.Ordinal);
        return what switch
        {
            "centres" => Texts.Say("bench.dimension.centre-distance-of", pair),
            "parallel" => Texts.Say("bench.dimension.parallelism-of", pair),
            "twist" => Texts.Say("bench.dimension.twist-between", pair),
            "diameter" => Texts.Say("bench.dimension.diameter-of", plain),
            "ovality" => Texts.Say("bench.dimension.ovality-of", plain),
            "taper" => Texts.Say("bench.dimension.taper-of", plain),
            "clearance" => Texts.Say("bench.dimension.play-in", plain),
            "grip" => Texts.Say("bench.dimension.grip-in", plain),
            "" => plain,
            _ => $"{plain} {what}",
        };
    }

    /// <summary>The name as a sentence begins with it.</summary>
    public static string Capital(string dimension)
    {
        var name = Name(dimension);
        return name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
    }

    /// <summary>Whether bending changes a dimension of that name: everything but the size, the roundness and the fit of a bore.</summary>
    public static bool IsBendable(string dimension)
    {
        ArgumentNullException.ThrowIfNull(dimension);
        return dimension[(dimension.LastIndexOf('.') + 1)..] is not ("diameter" or "ovality" or "taper" or "clearance" or "grip");
    }

    /// <summary>A probability in whole per cent; near the ends it says more than 99% or less than 1%, because nothing is certain.</summary>
    public static string Chance(double probability) =>
        probability switch
        {
            > 0.99 => Texts.Say("bench.dimension.more-than-99"),
            < 0.01 => Texts.Say("bench.dimension.less-than-1"),
            _ => $"{Math.Round(100 * probability):F0}%",
        };
}
