using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>What to expect of a part in the press: loads, travels, strains, from the theory and the yield range of its metal.</summary>
/// <remarks>Estimates from handbook numbers: the first bites tell better. Nothing here says that the part is sound.</remarks>
public sealed class PressPlan
{
    /// <summary>Slope beyond yield over E that the estimates use: mild steel at a few per cent strain (from memory; the bites teach the real one).</summary>
    public const double HardeningRatio = 0.004;

    // Section sizes, E, the give of blocks and packing: own choice, tested by bench/results/press.txt.
    private const double OtherLogSpread = 0.1;
    private const double MinorAngleRadians = 0.5 * Math.PI / 180; // bores parallel within 0.5°: common practice, from memory

    private PressPlan(
        PressJob job,
        PressFindings findings,
        PressLayout layout,
        CrossSection section,
        double outByMetres,
        double outByUncertainty
    )
    {
        (Findings, Layout, Section) = (findings, layout, section);
        (OutByMetres, OutByUncertaintyMetres) = (outByMetres, outByUncertainty);
        Metal = MaterialTable.Of(job.Part.Material!.Value);
        Lever = job.SetUp?.Lever ?? 1;
        var range = Metal.Yield!;
        Low = Bend(range.LowPascals, HardeningRatio);
        Middle = Bend(range.MiddlePascals, HardeningRatio);
        High = Bend(range.HighPascals, HardeningRatio);
        Noise = new BiteNoise(job.Limits.Travel.Metres, job.Limits.Reading.Metres / Lever);
        Straightening = Middle.BiteForSet(OutByMetres / Lever);
        Wall = LocalBuckling.First(section, High.Curve.Steel);
        WallSetMetres = LocalBuckling.LargestSetMetres(Middle);
        HingeSetMetres = Bend(range.MiddlePascals, 0).LargestSetMetres;
        _prior = BitePrior.From(Middle, range, OtherLogSpread, readAtPart: job.SetUp is { TravelAtPart: true });
    }

    private readonly BitePrior _prior;

    /// <summary>Where the part is bent.</summary>
    public PressFindings Findings { get; }

    /// <summary>Where blocks and ram go.</summary>
    public PressLayout Layout { get; }

    /// <summary>The section.</summary>
    public CrossSection Section { get; }

    /// <summary>The metal with its yield range and source.</summary>
    public MaterialEntry Metal { get; }

    /// <summary>How far the part is out before the first bite, where it is measured, m.</summary>
    public double OutByMetres { get; }

    /// <summary>Standard uncertainty of it, m.</summary>
    public double OutByUncertaintyMetres { get; }

    /// <summary>How far the measured place moves for each unit of set under the ram.</summary>
    public double Lever { get; }

    /// <summary>The bar in the press if its steel yields at the lower end of the range.</summary>
    public ThreePointBend Low { get; }

    /// <summary>The same at the middle of the range.</summary>
    public ThreePointBend Middle { get; }

    /// <summary>The same at the upper end of the range.</summary>
    public ThreePointBend High { get; }

    /// <summary>How well travel and straightness are read, at the ram.</summary>
    public BiteNoise Noise { get; }

    /// <summary>The one bite that would take out the whole bend, at the middle of the range; never to be made, it shows load and strain to come.</summary>
    public Bite? Straightening { get; }

    /// <summary>The wall that buckles first with its strain over the yield strain; null for a solid bar.</summary>
    public (PlateElement Plate, double StrainRatio)? Wall { get; }

    /// <summary>Largest set of one bite before that wall may buckle, m; infinite for a solid bar.</summary>
    public double WallSetMetres { get; }

    /// <summary>Set beyond which the load of an unhardened bar no longer rises, m: from there on pump by travel, never by the gauge.</summary>
    public double HingeSetMetres { get; }

    /// <summary>Largest strain of the outermost metal that straightening takes. The accident is taken to have used up as much, for want of anything better.</summary>
    public double StraighteningStrain => Straightening?.OuterStrain ?? double.PositiveInfinity;

    /// <summary>What is believed about the spring-back before the first bite.</summary>
    public BiteBelief StartBelief() => new BiteModel(Section, Middle.Curve.Steel.YieldStrain, _prior, Noise).Start;

    /// <summary>The plan of a job that the <see cref="Gate"/> lets through.</summary>
    public static PlanOutcome Of(PressJob job)
    {
        var missing = new List<string>();
        if (job.Section is null)
        {
            missing.Add(Texts.Say("press.plan.measure-the-section-where-it"));
        }

        if (job.Part.Material is not { } material || MaterialTable.Of(material).Yield is null)
        {
            missing.Add(Texts.Say("press.plan.choose-the-metal"));
        }

        var findings = PressFindings.Of(job);
        if (missing.Count > 0)
        {
            return new PlanOutcome.NeedsMore(findings, missing);
        }

        var section = job.Section!.Build();
        var layout = PressLayout.Of(job, findings, section, missing);
        var outBy = layout is null ? null : OutBy(job, findings, layout, missing);
        if (layout is null || outBy is not { } o)
        {
            return new PlanOutcome.NeedsMore(findings, missing);
        }

        var plan = new PressPlan(job, findings, layout, section, o.Metres, o.Uncertainty);
        var refusals = plan.Refusals(job).Distinct().Select(GateWords.For).ToList();
        return refusals.Count > 0 ? new PlanOutcome.Refused(plan, refusals) : new PlanOutcome.Ready(plan);
    }

    private IEnumerable<RefusalReason> Refusals(PressJob job)
    {
        if (Findings.Twist is { IsSeen: true } twist && Math.Abs(twist.AngleRadians) > MinorAngleRadians)
        {
            yield return RefusalReason.Twisted;
        }

        if (Findings.SideBend is { } side && Math.Abs(side.AngleRadians) > MinorAngleRadians)
        {
            yield return RefusalReason.TwoPlanes;
        }

        var isArm = job.Part.Kind == PartKind.Wishbone;
        if (
            isArm
            && (
                Math.Abs(Findings.Bend?.AngleRadians ?? 0) > Bench.Straightening.LargestBendRadians
                || OutByMetres > Bench.Straightening.LargestBendMetres
            )
        )
        {
            yield return RefusalReason.BentTooFar;
        }

        if (Wall is { StrainRatio: <= 1 })
        {
            yield return RefusalReason.BucklesFirst;
        }

        // Once bites are made, what they have really strained is counted bite by bite instead.
        if (StraighteningStrain > job.Limits.Strain && !job.StandingBites.Any())
        {
            yield return RefusalReason.StrainOverLimit;
        }
    }

    private static (double Metres, double Uncertainty)? OutBy(
        PressJob job,
        PressFindings findings,
        PressLayout layout,
        List<string> missing
    )
    {
        if (job.OutBy.Count > 0)
        {
            return (job.OutBy.Average(o => o.Metres), job.Limits.Reading.Metres / Math.Sqrt(job.OutBy.Count));
        }

        if (findings.Bend is { } bend && layout.RamMetres is { } ram)
        {
            var height = Math.Abs(bend.HeightOverChord(ram, ram - layout.LeftArmMetres, ram + layout.RightArmMetres));
            return (height, height * bend.AngleUncertaintyRadians / Math.Abs(bend.AngleRadians));
        }

        missing.Add(Texts.Say("press.plan.measure-how-far-the-part"));
        return null;
    }

    private ThreePointBend Bend(double yieldPascals, double hardening) =>
        new(
            new MomentCurvature(Section, new Steel(MaterialTable.ElasticModulusPascals, yieldPascals, hardening)),
            Layout.LeftArmMetres,
            Layout.RightArmMetres
        );
}
