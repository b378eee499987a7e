using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>What to do with a part, why, and what to measure next.</summary>
internal sealed record Advice(Disposition Disposition, IReadOnlyList<string> Reasons, IReadOnlyList<string> MeasureNext)
{
    public static Advice Of(BenchCase part, PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions, bool? isRight)
    {
        var say = new AdviceSentences(part);
        if (Scrap(part.Part) is { } scrap)
        {
            return new Advice(Disposition.Replace, [scrap, .. say.Out(verdict)], []);
        }

        if (isRight == false && part.Variant!.Type is { } type)
        {
            return new Advice(Disposition.Replace, [.. say.WrongType(type, verdict)], []);
        }

        return verdict.Verdict switch
        {
            Verdict.True => new Advice(Disposition.Keep, [.. say.Kept(verdict)], []),
            Verdict.Out => WhenOut(part, verdict, say),
            _ => new Advice(Disposition.MeasureAgain, [.. say.Open(verdict, dimensions)], [.. say.MeasureNext(verdict, dimensions)]),
        };
    }

    /// <summary>What ends a part whatever it measures.</summary>
    private static string? Scrap(Part part) =>
        part.Is(PartCondition.Cracked) ? Texts.Say("bench.advice.it-is-cracked-a-cracked")
        : part.Is(PartCondition.Kinked) ? Texts.Say("bench.advice.it-is-kinked-the-metal")
        : part.Is(PartCondition.Corroded) ? Texts.Say("bench.advice.it-is-pitted-or-thinned")
        : part.Is(PartCondition.ThreadDamaged) && SteersOrCarriesTheWheel(part.Kind) ? Texts.Say("bench.advice.its-thread-or-seat-is")
        : part.Conditions.Any(c => c is PartCondition.Welded or PartCondition.Heated) && SteersOrCarriesTheWheel(part.Kind)
            ? Texts.Say("bench.advice.it-was-welded-or-heated")
        : null;

    private static bool SteersOrCarriesTheWheel(PartKind kind) =>
        kind
            is PartKind.Upright
                or PartKind.StubAxle
                or PartKind.SteeringLever
                or PartKind.Trunnion
                or PartKind.TrackRod
                or PartKind.BallJoint;

    private static Advice WhenOut(BenchCase part, PartVerdict verdict, AdviceSentences say)
    {
        var worn = verdict.Out.Where(o => !o.Value.IsBendable).ToList();
        var bent = verdict.Out.Where(o => o.Value.IsBendable).ToList();
        if (bent.Count == 0 && worn.Count > 0)
        {
            return new Advice(Disposition.Replace, [.. say.Out(verdict), AdviceSentences.Worn(worn[0].Value)], []);
        }

        var untold = Straightening.Untold(part.Part);
        if (untold is null && Straightening.Forbidden(part.Part) is { } forbidden)
        {
            return new Advice(Disposition.Replace, [.. say.Out(verdict), forbidden], []);
        }

        if (bent.Any(b => IsTooFar(b.Value, b.Comparison)))
        {
            return new Advice(Disposition.Replace, [.. say.Out(verdict), Texts.Say("bench.advice.it-is-bent-by-more")], []);
        }

        if (bent.Any(b => IsTwist(b.Value)))
        {
            return new Advice(Disposition.Replace, [.. say.Out(verdict), Texts.Say("bench.advice.it-is-twisted-a-press")], []);
        }

        if (untold is not null)
        {
            return new Advice(Disposition.MeasureAgain, [.. say.Out(verdict), Texts.Say("bench.advice.what-to-do-with-it")], [untold]);
        }

        string[] alsoWorn = worn.Count > 0 ? [AdviceSentences.Worn(worn[0].Value)] : [];
        return new Advice(Disposition.Straighten, [.. say.Out(verdict), Texts.Say("bench.advice.if-it-is-low-carbon"), .. alsoWorn], []);
    }

    // Rods through two eyes: turned against each other about the line between them (RodsReduction).
    private static bool IsTwist(DimensionValue value) => value.Dimension.EndsWith("twist", StringComparison.Ordinal);

    private static bool IsTooFar(DimensionValue value, Comparison comparison) =>
        Math.Abs(comparison.Deviation)
        > (value.Quantity == Quantity.Angle ? Straightening.LargestBendRadians : Straightening.LargestBendMetres);
}
