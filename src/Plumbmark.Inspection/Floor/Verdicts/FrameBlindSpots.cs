using Plumbmark.Engine.Hypotheses;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>What could be wrong with the frame beyond its limit without the readings so far showing it.</summary>
/// <remarks>
/// The smallest amount seen is δ0 u: with it a test at 5 % (either way) notices the damage in four cases of five; δ0(0.05, 0.20) = 2.80
/// (Baarda 1968). For a form it is that at the place where it shows least.
/// </remarks>
internal static class FrameBlindSpots
{
    /// <summary>How many standard uncertainties an amount must have to be noticed.</summary>
    public static double Noticed { get; } = BaardaReliability.Delta0(0.05, 0.20);

    /// <summary>The forms of damage to a frame as a whole.</summary>
    public static IReadOnlyList<DamageForm> Forms { get; } =
    [DamageForm.Sidesway, DamageForm.Diamond, DamageForm.Mash, DamageForm.Twist, DamageForm.Sag];

    /// <summary>The limit that a form is held against; null when it is not known.</summary>
    public static double? LimitOf(DamageForm form, Limits limits) =>
        (form is DamageForm.Twist or DamageForm.Sag ? limits.Height : limits.Mirror)?.Metres;

    public static IReadOnlyList<BlindSpot> Of(
        MeasuredFrame frame,
        Contrasts contrasts,
        IReadOnlyList<FrameCheck> checks,
        Limits? limits,
        LengthWords words
    )
    {
        _ = words;
        if (limits is null)
        {
            return [];
        }

        var spots = new List<BlindSpot>();
        AddForms(spots, frame, contrasts, limits);
        AddPoints(spots, frame, checks, limits);
        return spots;
    }

    private static void AddForms(List<BlindSpot> spots, MeasuredFrame frame, Contrasts contrasts, Limits limits)
    {
        if (frame.Pairs.Count == 0)
        {
            return;
        }

        var smallest = SmallestSeen(frame, contrasts);
        foreach (var form in Forms)
        {
            var limit = LimitOf(form, limits);
            var seen = smallest.GetValueOrDefault(form, double.PositiveInfinity);
            if (limit is { } t && seen > t)
            {
                double? shown = double.IsFinite(seen) ? seen : null;
                var name = form.ToString().ToLowerInvariant();
                spots.Add(new BlindSpot(name, null, shown, t, BlindSpotWords.Form(form)));
            }
        }
    }

    /// <summary>For each form the smallest amount seen where it shows least; a form that no reading touches is missing.</summary>
    private static Dictionary<DamageForm, double> SmallestSeen(MeasuredFrame frame, Contrasts contrasts)
    {
        if (contrasts.All.Count == 0)
        {
            return [];
        }

        var comparison = new GaussianComparison(contrasts.Values(), contrasts.Covariance(), contrasts.Lies());
        var shapes = DamageShapes.Of(frame).Where(s => !s.IsLookAlike && s.Form != DamageForm.Point).ToList();
        var effects = comparison.Effects([.. shapes.Select(s => contrasts.All.Select(c => c.ChangeBy(s.Moves[0])).ToArray())]);
        return shapes
            .Select((shape, i) => (shape.Form, shape.IsSymmetric, Seen: Noticed * effects.UncertaintyAlone(i)))
            .Where(s => !(s.IsSymmetric && double.IsInfinity(s.Seen)))
            .GroupBy(s => s.Form)
            .ToDictionary(g => g.Key, g => g.Max(s => s.Seen));
    }

    /// <summary>Every point that must be true needs checks across, along and in height that would notice the limit.</summary>
    private static void AddPoints(List<BlindSpot> spots, MeasuredFrame frame, IReadOnlyList<FrameCheck> checks, Limits limits)
    {
        for (var p = 0; p < frame.Points.Count; p++)
        {
            if (!Roles.MustBeTrue(frame.Points, p))
            {
                continue;
            }

            var id = frame.Points[p].Id;
            var own = checks.Select(c => c.Check).Where(c => c.Points.Contains(id)).ToList();
            AddPoint(
                spots,
                id,
                "plan",
                [SmallestOf(own, "stagger", $"deviation-x:{id}"), SmallestOf(own, "sideShift", $"deviation-y:{id}")],
                limits.Mirror ?? limits.Point
            );
            AddPoint(spots, id, "height", [SmallestOf(own, "heightDifference", $"deviation-z:{id}")], limits.Height ?? limits.Point);
        }
    }

    private static void AddPoint(
        List<BlindSpot> spots,
        string point,
        string direction,
        double[] seen,
        Plumbmark.Engine.Lengths.Length? limit
    )
    {
        if (limit is { } t && seen.Max() > t.Metres)
        {
            double? smallest = double.IsFinite(seen.Max()) ? seen.Max() : null;
            spots.Add(new BlindSpot("point", point, smallest, t.Metres, BlindSpotWords.Point(point, direction)) { Direction = direction });
        }
    }

    private static double SmallestOf(List<Check> own, string kind, string bookId)
    {
        var u = own.Where(c => c.Kind == kind || c.Id == bookId).Select(c => c.UMetres).DefaultIfEmpty(double.PositiveInfinity).Min();
        return Noticed * u;
    }
}
