using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The limits, as they stand or as they were typed.</summary>
public sealed record LimitsView(OpenCar Car, string Mirror, string Height, string Point, string Source, string Note, FieldFaults Faults)
{
    /// <summary>The sources with their words.</summary>
    public static IReadOnlyList<(string Value, string Text)> Sources { get; } =
    [
        (nameof(LimitSource.Factory), Say("limits.the-maker-for-this")),
        (nameof(LimitSource.Practice), Say("limits.what-the-trade-uses")),
        (nameof(LimitSource.Own), Say("limits.my-own-choice")),
    ];

    /// <summary>What restorers commonly call square: a limit of practice, offered and never silently taken. Common practice, no source.</summary>
    public static Limits Practice(LengthUnit units)
    {
        var limit = units == LengthUnit.Inch ? Length.FromFraction(0, 1, 8, LengthUnit.Inch) : Length.FromMillimetres(3);
        return new Limits(limit, limit, limit, LimitSource.Practice, Say("limits.what-restorers-commonly-call"));
    }

    /// <summary>The page for a request.</summary>
    public static LimitsView Of(CarRequest request, FieldFaults? faults = null)
    {
        if (faults is not null)
        {
            return new LimitsView(
                request.Car,
                request.Field("mirror"),
                request.Field("height"),
                request.Field("point"),
                request.Field("source"),
                request.Field("note"),
                faults
            );
        }

        var limits = request.Car.File.Frame.Limits;
        return new LimitsView(
            request.Car,
            limits?.Mirror?.AsTyped ?? "",
            limits?.Height?.AsTyped ?? "",
            limits?.Point?.AsTyped ?? "",
            (limits?.Source ?? LimitSource.Own).ToString(),
            limits?.Note ?? "",
            new FieldFaults()
        );
    }

    /// <summary>The limits in one sentence; null when there is none.</summary>
    public static string? Words(Limits? limits)
    {
        if (limits is null || (limits.Mirror ?? limits.Height ?? limits.Point) is null)
        {
            return null;
        }

        var parts = new[]
        {
            (Say("limits.sideways-or-fore-and"), limits.Mirror),
            (Say("limits.in-height"), limits.Height),
            (Say("limits.against-the-book"), limits.Point),
        };
        var known = parts.Where(p => p.Item2 is not null).Select(p => (p.Item1, Text: p.Item2!.Value.ToString())).ToList();
        var amounts =
            known.Count == parts.Length && known.DistinctBy(p => p.Text).Count() == 1
                ? known[0].Text
                : Texts.List(known.Select(p => $"{p.Text} {p.Item1}"));
        var source = limits.Source switch
        {
            LimitSource.Factory => Say("limits.the-makers-limit"),
            LimitSource.Practice => Say("limits.a-limit-of-practice"),
            _ => Say("limits.the-owners-own-limit"),
        };
        return Say("limits.out-means-more-than", amounts, source, limits.Note is { } note ? $" ({note})" : "");
    }
}
