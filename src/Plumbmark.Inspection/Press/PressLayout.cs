using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>Where supports, ram and blocks go.</summary>
/// <param name="LeftArmMetres">From the left support to the ram, m.</param>
/// <param name="RightArmMetres">From the ram to the right support, m.</param>
/// <param name="RamMetres">Station of the ram, m; null when the part was not measured along its length.</param>
/// <param name="IsProposed">Whether this is our proposal; false when the person set it up so.</param>
/// <param name="RightBlockHigherMetres">How much higher the right block stands, so that both legs of the bend slope alike and the load is square, m.</param>
/// <param name="MoreRamStations">For a sweep: where else the ram works, in turn, m.</param>
/// <param name="Packer">What keeps the ram from crushing a wall; null for a solid bar.</param>
public sealed record PressLayout(
    double LeftArmMetres,
    double RightArmMetres,
    double? RamMetres,
    bool IsProposed,
    double RightBlockHigherMetres,
    IReadOnlyList<double> MoreRamStations,
    string? Packer
)
{
    // Common practice, no source: 6 to 10 in between the blocks for a kink; arms of at least three depths bend rather than crush.
    private const double KinkArmMetres = 0.1;
    private const double DepthsPerArm = 3;
    private const double FewestDepthsPerArm = 1.5;
    private const double EndMetres = 0.01; // room for a block at the end of what was measured
    private const double BesideSweepMetres = 0.04;

    /// <summary>From support to support, m.</summary>
    public double SpanMetres => LeftArmMetres + RightArmMetres;

    /// <summary>The layout of a job, or what is missing for it.</summary>
    public static PressLayout? Of(PressJob job, PressFindings findings, CrossSection section, ICollection<string> missing)
    {
        var packer = PackerFor(job, section);
        if (job.SetUp is { } chosen)
        {
            var (left, right) = (chosen.LeftArm.Metres, chosen.RightArm.Metres);
            return new(left, right, chosen.Ram?.Metres, false, Rise(left, right, findings.Bend), [], packer);
        }

        if (findings.Bend is not { } bend)
        {
            missing.Add(Texts.Say("press.layout.measure-gaps-along-the-part"));
            return null;
        }

        var (first, last) = Reach(job);
        var wish = Math.Max(KinkArmMetres, DepthsPerArm * section.DepthMetres);
        wish = findings.IsSweep ? Math.Max(wish, (bend.LengthMetres / 2) + BesideSweepMetres) : wish;
        var (leftArm, rightArm) = (
            Math.Min(wish, bend.CentreMetres - first - EndMetres),
            Math.Min(wish, last - bend.CentreMetres - EndMetres)
        );
        if (Math.Min(leftArm, rightArm) < FewestDepthsPerArm * section.DepthMetres)
        {
            missing.Add(Texts.Say("press.layout.the-bend-lies-too-near"));
            return null;
        }

        IReadOnlyList<double> more = findings.IsSweep
            ? [bend.CentreMetres - (bend.LengthMetres / 4), bend.CentreMetres + (bend.LengthMetres / 4)]
            : [];
        return new(leftArm, rightArm, bend.CentreMetres, true, Rise(leftArm, rightArm, bend), more, packer);
    }

    // With legs of equal slope θ/2 the supports stand a·tan(θ/2) and b·tan(θ/2) below the crown: the shorter arm needs the higher block.
    private static double Rise(double left, double right, Bend? bend) =>
        bend is null ? 0 : (left - right) * Math.Tan(Math.Abs(bend.AngleRadians) / 2);

    private static (double First, double Last) Reach(PressJob job)
    {
        var stations = job.Lines.SelectMany(l => l.Gaps).Select(g => g.At.Metres).ToList();
        return job.Part.Length is { } length
            ? (Math.Min(0, stations.Min()), Math.Max(length.Metres, stations.Max()))
            : (stations.Min(), stations.Max());
    }

    private static string? PackerFor(PressJob job, CrossSection section)
    {
        if (!section.HasWalls)
        {
            return null;
        }

        return job.Section!.Shape switch
        {
            SectionShape.Tube => Texts.Say("press.layout.saddles-of-hardwood-or-aluminium"),
            SectionShape.Box or SectionShape.Hat => Texts.Say("press.layout.a-wide-soft-saddle-under"),
            SectionShape.ChannelLegsAtRam => Texts.Say("press.layout.a-close-fitting-packer-between"),
            _ => Texts.Say("press.layout.a-close-fitting-packer-inside"),
        };
    }
}
