using Plumbmark.Inspection.Floor;

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
        part.Is(PartCondition.Cracked) ? "It is cracked; a cracked part is not used again."
        : part.Is(PartCondition.Kinked) ? "It is kinked; the metal in the crease is used up."
        : part.Is(PartCondition.Corroded) ? "It is pitted or thinned by rust; what is left of it cannot be judged by measuring."
        : part.Is(PartCondition.ThreadDamaged) && SteersOrCarriesTheWheel(part.Kind)
            ? "Its thread or seat is damaged; such parts break where the thread begins."
        : part.Conditions.Any(c => c is PartCondition.Welded or PartCondition.Heated) && SteersOrCarriesTheWheel(part.Kind)
            ? "It was welded or heated; a part that steers or carries the wheel is not used after that."
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
            return new Advice(
                Disposition.Replace,
                [
                    .. say.Out(verdict),
                    "It is bent by more than half an inch or five degrees; that is for an engineer, not for a press at home.",
                ],
                []
            );
        }

        if (bent.Any(b => IsTwist(b.Value)))
        {
            return new Advice(
                Disposition.Replace,
                [
                    .. say.Out(verdict),
                    "It is twisted; a press bends in one plane and does not take a twist out. Replace it, or ask a competent person.",
                ],
                []
            );
        }

        if (untold is not null)
        {
            return new Advice(
                Disposition.MeasureAgain,
                [.. say.Out(verdict), "What to do with it hangs on what is not told yet."],
                [untold]
            );
        }

        string[] alsoWorn = worn.Count > 0 ? [AdviceSentences.Worn(worn[0].Value)] : [];
        return new Advice(
            Disposition.Straighten,
            [
                .. say.Out(verdict),
                "If it is low-carbon steel and was never heated, welded or bent back before, it may be straightened cold, a little at a time; the room Press asks and says how.",
                .. alsoWorn,
            ],
            []
        );
    }

    // Rods through two eyes: turned against each other about the line between them (RodsReduction).
    private static bool IsTwist(DimensionValue value) => value.Dimension.EndsWith("twist", StringComparison.Ordinal);

    private static bool IsTooFar(DimensionValue value, Comparison comparison) =>
        Math.Abs(comparison.Deviation)
        > (value.Quantity == Quantity.Angle ? Straightening.LargestBendRadians : Straightening.LargestBendMetres);
}
