using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>A check with what it is made of, so that a plan can ask what one more reading would do to it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Weights">Its value as a weighted sum of the frame's coordinates.</param>
internal sealed record FrameCheck(Check Check, double[] Weights);

/// <summary>Everything about the frame that is held against a limit.</summary>
internal sealed class FrameChecks
{
    private readonly MeasuredFrame _frame;
    private readonly Contrasts _contrasts;
    private readonly FrameLie _lie;
    private readonly Limits _limits;
    private readonly List<FrameCheck> _all = [];

    private FrameChecks(MeasuredFrame frame, Contrasts contrasts, FrameLie lie, Limits limits) =>
        (_frame, _contrasts, _lie, _limits) = (frame, contrasts, lie, limits);

    /// <summary>All checks that the readings allow, pair by pair from the first, then the frame as a whole, then point by point.</summary>
    public static IReadOnlyList<FrameCheck> Of(
        MeasuredFrame frame,
        Contrasts contrasts,
        FrameLie lie,
        Limits? limits,
        IReadOnlyList<DamageExplanation> explanations
    )
    {
        var checks = new FrameChecks(frame, contrasts, lie, limits ?? new Limits());
        for (var i = 0; i < frame.Pairs.Count; i++)
        {
            checks.AddPair(i);
        }

        checks.AddTwist();
        checks.AddSag();
        checks.AddBook();
        checks.AddForms(explanations);
        return checks._all;
    }

    private void AddPair(int index)
    {
        var (name, left, right) = _frame.Pairs[index];
        string[] points = [_frame.Points[left].Id, _frame.Points[right].Id];
        var mustBeTrue = Roles.MustBeTrue(_frame.Points, left, right);
        foreach (
            var (kind, word, limit) in new[]
            {
                (ContrastKind.Middle, "sideShift", _limits.Mirror),
                (ContrastKind.Stagger, "stagger", _limits.Mirror),
                (ContrastKind.Level, "heightDifference", _limits.Height),
            }
        )
        {
            if (_contrasts.Sides(kind, index) is { } contrast && _lie.Adjust(contrast) is { } adjusted)
            {
                Add($"{Words.Dashed(word)}:{name}", word, adjusted, limit?.Metres, points, mustBeTrue);
            }
        }

        if (_contrasts.Width(index) is { } width)
        {
            Add($"width:{name}", "width", _lie.AsItIs(width), _limits.Mirror?.Metres, points, mustBeTrue);
        }
    }

    private void AddTwist()
    {
        var stations = Stations.InHeight(_frame);
        var ends = Ends(stations);
        if (
            ends is not var (front, rear)
            || _contrasts.Sides(ContrastKind.Level, IndexOf(stations.Pair(front))) is not { } ahead
            || _contrasts.Sides(ContrastKind.Level, IndexOf(stations.Pair(rear))) is not { } behind
            || _lie.Adjust(Contrasts.Difference(ahead, behind)) is not { } adjusted
        )
        {
            return;
        }

        Add("twist", "twist", adjusted, _limits.Height?.Metres, PointsOf(stations.Pair(front), stations.Pair(rear)), mustBeTrue: true);
    }

    /// <summary>Sag can only be told from the book's heights: without them nobody knows whether the rail was built straight.</summary>
    private void AddSag()
    {
        var stations = Stations.InHeight(_frame);
        if (Ends(stations) is not var (front, rear))
        {
            return;
        }

        foreach (var isLeft in new[] { true, false })
        {
            var sags = new List<AdjustedContrast>();
            int PointAt(int station) => isLeft ? stations.Pair(station).Left : stations.Pair(station).Right;
            for (var s = front + 1; s < rear; s++)
            {
                if (_contrasts.SagAt(PointAt(s), PointAt(front), PointAt(rear)) is { } contrast && _lie.Adjust(contrast) is { } sag)
                {
                    sags.Add(sag);
                }
            }

            if (sags.Count > 0)
            {
                var most = sags.MaxBy(s => s.ValueMetres)!;
                var points = Enumerable.Range(front, rear - front + 1).Select(s => _frame.Points[PointAt(s)].Id);
                Add($"sag:{(isLeft ? "L" : "R")}", "sag", most, _limits.Height?.Metres, [.. points], mustBeTrue: true);
            }
        }
    }

    private void AddBook()
    {
        foreach (var contrast in _contrasts.All.Where(c => c.IsBook))
        {
            if (_lie.Adjust(contrast) is { } adjusted)
            {
                var point = _frame.Points[contrast.Subject].Id;
                var axis = "xyz"[contrast.Kind - ContrastKind.BookX];
                var mustBeTrue = Roles.MustBeTrue(_frame.Points, contrast.Subject);
                Add($"deviation-{axis}:{point}", "deviation", adjusted, _limits.Point?.Metres, [point], mustBeTrue);
            }
        }
    }

    /// <summary>
    /// A form of damage that is believed to be there is held against its limit too: all readings together know it better than any one pair. Of a bent pair
    /// nothing says whether one of its points moved by all of it or both by half; but one of them moved by half at least, and that is held.
    /// </summary>
    private void AddForms(IReadOnlyList<DamageExplanation> explanations)
    {
        if (!DamageReport.IsClaimed(explanations))
        {
            return;
        }

        foreach (var part in explanations[0].Parts)
        {
            var (name, none) = (DamageReport.NameOf(part), new Contrast(ContrastKind.Stagger, Contrast.NoSubject, [], 0, []));
            var value = new AdjustedContrast(none, part.AmountMetres, part.UMetres, []);
            if (FrameBlindSpots.Forms.Contains(part.Form))
            {
                Add($"damage:{name}", name, value, FrameBlindSpots.LimitOf(part.Form, _limits), [], mustBeTrue: true);
            }
            else if (part is { Form: DamageForm.Point, IsPair: true, Pair: { } pair })
            {
                var atLeast = new AdjustedContrast(none, part.AmountMetres / 2, part.UMetres / 2, []);
                Add(
                    $"damage:{part.From}",
                    name,
                    atLeast,
                    _limits.Point?.Metres,
                    [pair.Left, pair.Right],
                    Roles.MustBeTrue(_frame.Points, part.Subject)
                );
            }
            else if (part is { Form: DamageForm.Point })
            {
                var point = _frame.Points[part.Subject].Id;
                Add($"damage:{point}", name, value, _limits.Point?.Metres, [point], Roles.MustBeTrue(_frame.Points, part.Subject));
            }
        }
    }

    /// <summary>The outermost stations that carry suspension, springs or steering; else the outermost. Null with fewer than two.</summary>
    private (int Front, int Rear)? Ends(Stations stations)
    {
        var all = Enumerable.Range(0, stations.Count).ToList();
        var bearing = all.Where(s =>
                Roles.Matters(_frame.Points[stations.Pair(s).Left]) || Roles.Matters(_frame.Points[stations.Pair(s).Right])
            )
            .ToList();
        var chosen = bearing.Count >= 2 ? bearing : all;
        return chosen.Count >= 2 ? (chosen[0], chosen[^1]) : null;
    }

    private int IndexOf(FramePair pair) => _frame.Pairs.ToList().IndexOf(pair);

    private string[] PointsOf(FramePair a, FramePair b) =>
        [_frame.Points[a.Left].Id, _frame.Points[a.Right].Id, _frame.Points[b.Left].Id, _frame.Points[b.Right].Id];

    private void Add(string id, string kind, AdjustedContrast value, double? limit, IReadOnlyList<string> points, bool mustBeTrue)
    {
        var check = new Check(
            id,
            kind,
            value.ValueMetres,
            value.UMetres,
            limit,
            limit is null ? null : _limits.Source,
            null,
            null,
            points,
            mustBeTrue
        );
        _all.Add(new FrameCheck(check.Judged(double.PositiveInfinity), value.Weights));
    }
}
