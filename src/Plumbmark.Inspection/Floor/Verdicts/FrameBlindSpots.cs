using Plumbmark.Engine.Hypotheses;
using Plumbmark.Engine.Lengths;
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

    /// <summary>For each form and each point that must be true the smallest amount that would show; blind where that is more than the limit.</summary>
    public static IReadOnlyList<BlindSpot> Of(MeasuredFrame frame, Contrasts contrasts, FrameLie lie, Limits? limits)
    {
        var sight = new List<BlindSpot>();
        if (limits is not null)
        {
            AddForms(sight, frame, contrasts, limits);
            AddPoints(sight, frame, contrasts, lie, limits);
        }

        return sight;
    }

    private static void AddForms(List<BlindSpot> sight, MeasuredFrame frame, Contrasts contrasts, Limits limits)
    {
        if (frame.Pairs.Count == 0)
        {
            return;
        }

        var smallest = SmallestSeen(frame, contrasts);
        foreach (var form in Forms)
        {
            if (LimitOf(form, limits) is { } limit)
            {
                var (seen, hidesAlike) = smallest.GetValueOrDefault(form, (double.PositiveInfinity, false));
                var name = form.ToString().ToLowerInvariant();
                var words = hidesAlike ? BlindSpotWords.SagAlike : BlindSpotWords.Form(form);
                sight.Add(new BlindSpot(name, null, Finite(seen), limit, words) { Direction = hidesAlike ? "alike" : null });
            }
        }
    }

    private static double? Finite(double metres) => double.IsFinite(metres) ? metres : null;

    /// <summary>
    /// For each form the smallest amount seen where it shows least, and whether it hides only where both sides share it alike; a form that no reading
    /// touches is missing. Sag is the form that both rails commonly share: without the book's heights left against right cannot see it. The others are
    /// by their nature different from side to side, and what both sides share of them is said beside the verdict.
    /// </summary>
    private static Dictionary<DamageForm, (double Seen, bool HidesAlike)> SmallestSeen(MeasuredFrame frame, Contrasts contrasts)
    {
        if (contrasts.All.Count == 0)
        {
            return [];
        }

        var comparison = new GaussianComparison(contrasts.Values(), contrasts.Covariance(), contrasts.Lies());
        var shapes = DamageShapes.Of(frame).Where(s => !s.IsLookAlike && s.Form != DamageForm.Point).ToList();
        return shapes
            .Select(shape =>
                (shape.Form, shape.IsSymmetric, Seen: Noticed * comparison.UncertaintyAlone(contrasts.ChangesBy(shape.Moves[0])))
            )
            .Where(s => s.Form == DamageForm.Sag || !(s.IsSymmetric && double.IsInfinity(s.Seen)))
            .GroupBy(s => s.Form)
            .ToDictionary(
                g => g.Key,
                g => (g.Max(s => s.Seen), double.IsInfinity(g.Max(s => s.Seen)) && g.All(s => s.IsSymmetric == double.IsInfinity(s.Seen)))
            );
    }

    /// <summary>Every point that must be true needs checks across, along and in height that would notice the limit.</summary>
    private static void AddPoints(List<BlindSpot> sight, MeasuredFrame frame, Contrasts contrasts, FrameLie lie, Limits limits)
    {
        for (var p = 0; p < frame.Points.Count; p++)
        {
            if (!Roles.MustBeTrue(frame.Points, p))
            {
                continue;
            }

            var id = frame.Points[p].Id;
            double Seen(ContrastKind sides, ContrastKind book) => Noticed * Math.Min(UOfSides(sides, p), UOfBook(book, p));
            var inPlan = Math.Max(Seen(ContrastKind.Stagger, ContrastKind.BookX), Seen(ContrastKind.Middle, ContrastKind.BookY));
            Add(id, "plan", inPlan, limits.Mirror ?? limits.Point);
            Add(id, "height", Seen(ContrastKind.Level, ContrastKind.BookZ), limits.Height ?? limits.Point);
        }

        void Add(string point, string direction, double seen, Length? limit)
        {
            if (limit is { } t)
            {
                sight.Add(
                    new BlindSpot("point", point, Finite(seen), t.Metres, BlindSpotWords.Point(point, direction)) { Direction = direction }
                );
            }
        }

        double UOfSides(ContrastKind kind, int point)
        {
            var pair = frame.Pairs.ToList().FindIndex(q => q.Left == point || q.Right == point);
            return pair >= 0 && contrasts.Sides(kind, pair) is { } contrast && lie.Adjust(contrast) is { } adjusted
                ? adjusted.UMetres
                : double.PositiveInfinity;
        }

        double UOfBook(ContrastKind kind, int point) =>
            contrasts.All.FirstOrDefault(c => c.Kind == kind && c.Subject == point) is { } contrast && lie.Adjust(contrast) is { } adjusted
                ? adjusted.UMetres
                : double.PositiveInfinity;
    }
}
