using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>Says what the adjusters of a side can do: settings, what comes right, what is left, and whether a fault is only absorbed.</summary>
internal static class AdjusterAdvice
{
    // Common practice, no source: needing more than a degree of camber from the adjusters means damage somewhere.
    private const double TellTaleCamber = Math.PI / 180;
    private const double SameMetres = 1e-7;

    // Less than a rule shows is not worth a spanner.
    private const double WorthMovingMetres = 0.2e-3;

    /// <summary>The answer for both sides; empty when nothing can be set or nothing is aimed at.</summary>
    /// <param name="model">The model.</param>
    /// <param name="figures">Its figures, for how sure each angle is.</param>
    /// <param name="display">How numbers are shown.</param>
    public static IReadOnlyList<SideSettings> Of(RoadModel model, IReadOnlyList<RoadFigure> figures, RoadDisplay display)
    {
        var solvers = new[] { Side.Left, Side.Right }.Select(side => (Side: side, Solver: new AdjusterSolver(model, side))).ToList();
        var solved = solvers.Where(s => s.Solver.HasWork).Select(s => (s.Side, s.Solver, Settings: s.Solver.Solve())).ToList();
        // Aiming a drawing that is beyond the book at the book would call the car what the drawing is.
        if (figures.Any(f => f.IsDrawingBeyondBook && (f.Kind is FigureKind.Camber or FigureKind.Castor)))
        {
            return
            [
                .. solved.Select(s => new SideSettings(
                    s.Side,
                    [],
                    [],
                    null,
                    false,
                    [$"On the {RoadNames.Of(s.Side)} no setting can be told while the drawing itself is beyond the book's limits."]
                )),
            ];
        }

        return [.. solved.Select(s => Answer(s.Side, s.Solver, s.Settings, figures, OtherOf(solved, s.Side), display))];
    }

    private static (AdjusterSolver Solver, double[]? Settings)? OtherOf(
        List<(Side Side, AdjusterSolver Solver, double[]? Settings)> solved,
        Side side
    ) => solved.Where(s => s.Side != side).Select(s => ((AdjusterSolver, double[]?)?)(s.Solver, s.Settings)).FirstOrDefault();

    private static SideSettings Answer(
        Side side,
        AdjusterSolver solver,
        double[]? settings,
        IReadOnlyList<RoadFigure> figures,
        (AdjusterSolver Solver, double[]? Settings)? other,
        RoadDisplay display
    )
    {
        if (settings is null)
        {
            var sentence =
                $"On the {RoadNames.Of(side)} the suspension does not go together within the adjusters' ranges, so no setting can be told.";
            return new(side, [], [], null, false, [sentence]);
        }

        var now = solver.AnglesAt([.. solver.Adjusters.Select(AdjusterSolver.FittedMetres)]);
        var then = solver.AnglesAt(settings);
        var angles = solver
            .Targets.Select((t, i) => new AimedAngle(t.Kind, t.Aim, t.Least, t.Most, now[i], then[i], UOf(figures, t.Kind, side)))
            .ToList();
        var set = solver.Adjusters.Select((a, j) => SettingOf(a, settings[j])).ToList();
        var verdicts = angles.Select(a => a.Verdict).OfType<Verdict>().ToList();
        bool? restored =
            verdicts.Contains(Verdict.Out) ? false
            : verdicts.Count > 0 && verdicts.All(v => v == Verdict.True) ? true
            : null;

        // What is not known well enough to set says nothing about a fault either.
        var isOpen = verdicts.Contains(Verdict.CannotTellYet);
        List<string> signs = [.. Fitted(set, display), .. isOpen ? [] : TellTales(set, angles, other, display)];
        return new(side, set, angles, restored, signs.Count > 0, [Headline(side, set, angles, restored, display), .. signs]);
    }

    private static AdjusterSetting SettingOf(Adjuster adjuster, double to)
    {
        var atEnd = to - adjuster.Least.Metres < SameMetres || adjuster.Most.Metres - to < SameMetres;
        var isZero = Math.Abs(to) < SameMetres;
        var unusual = adjuster.Usual is { } usual && Math.Abs(to) > usual.Metres + SameMetres;
        return new(adjuster, AdjusterSolver.FittedMetres(adjuster), to, atEnd && !isZero, unusual);
    }

    private static double UOf(IReadOnlyList<RoadFigure> figures, FigureKind kind, Side side) =>
        figures.FirstOrDefault(f => f.Kind == kind && f.Side == side)?.U ?? 0;

    private static string Headline(Side side, List<AdjusterSetting> set, List<AimedAngle> angles, bool? restored, RoadDisplay display)
    {
        var moves = set.Where(s => Math.Abs(s.ToMetres - s.FromMetres) >= WorthMovingMetres)
            .Select(s => $"{s.Adjuster.Id} from {display.SignedLength(s.FromMetres)} to {display.SignedLength(s.ToMetres)}")
            .ToList();
        var how = moves.Count == 0 ? "nothing needs setting" : string.Join(", ", moves);
        var open = angles
            .Where(a => a.Verdict == Verdict.CannotTellYet)
            .Select(a => $"{RoadNames.Of(a.Kind)} is only known to ±{RoadDisplay.Size(2 * a.U)}")
            .ToList();
        var left = angles
            .Where(a => a.Verdict == Verdict.Out)
            .Select(a => $"{RoadNames.Of(a.Kind)} {RoadDisplay.Size(a.LeftOver)} beyond its limit");
        return restored switch
        {
            true => $"On the {RoadNames.Of(side)} the adjusters reach the book's angles: {how}.",
            false =>
                $"On the {RoadNames.Of(side)} the adjusters cannot reach the book's angles. Nearest: {how}; left over: {string.Join(", ", left)}.",
            null when open.Count > 0 =>
                $"On the {RoadNames.Of(side)} it can't be told yet whether the adjusters reach the book's angles: {string.Join(", ", open)}. By the figures so far: {how}.",
            null => $"On the {RoadNames.Of(side)}, nearest to the book: {how}. No limits are told, so whether that will do cannot be told.",
        };
    }

    // What is on the car is a fact, whatever is still open.
    private static IEnumerable<string> Fitted(List<AdjusterSetting> set, RoadDisplay display) =>
        set.Where(s => s.Adjuster.Usual is { } usual && Math.Abs(s.FromMetres) > usual.Metres + SameMetres)
            .Select(s =>
                $"{RoadSentences.Capital(s.Adjuster.Id)} is set at {display.SignedLength(s.FromMetres)} now, beyond the usual {s.Adjuster.Usual!.Value.AsTyped}: a fault absorbed is still a fault; look for what is bent."
            );

    private static IEnumerable<string> TellTales(
        List<AdjusterSetting> set,
        List<AimedAngle> angles,
        (AdjusterSolver Solver, double[]? Settings)? other,
        RoadDisplay display
    )
    {
        foreach (var s in set.Where(s => s.IsUnusual))
        {
            yield return $"{RoadSentences.Capital(s.Adjuster.Id)} would go to {display.SignedLength(s.ToMetres)}, beyond the usual {s.Adjuster.Usual!.Value.AsTyped}: a fault absorbed is still a fault; look for what is bent.";
        }

        foreach (var a in angles.Where(a => a.Kind == FigureKind.Camber && Math.Abs(a.After - a.Before) > TellTaleCamber))
        {
            yield return $"It takes {RoadDisplay.Size(a.After - a.Before)} of camber; more than a degree says something is bent (common practice).";
        }

        foreach (var s in set.Where(s => s.Adjuster is { Kind: AdjusterKind.Shims, Step: not null }))
        {
            if (
                PartnerOf(s.Adjuster, other) is { } partner
                && Math.Abs(partner - s.ToMetres) > (2 * s.Adjuster.Step!.Value.Metres) + SameMetres
            )
            {
                yield return $"{RoadSentences.Capital(s.Adjuster.Id)} and its partner would differ by {display.LengthSize(partner - s.ToMetres)}; more than two shims between the sides says something is bent (common practice).";
            }
        }
    }

    private static double? PartnerOf(Adjuster adjuster, (AdjusterSolver Solver, double[]? Settings)? other)
    {
        if (other is not { Settings: { } settings } known)
        {
            return null;
        }

        for (var j = 0; j < settings.Length; j++)
        {
            var candidate = known.Solver.Adjusters[j];
            if (candidate.Kind == adjuster.Kind && candidate.Direction == adjuster.Direction && candidate.At.SequenceEqual(adjuster.At))
            {
                return settings[j];
            }
        }

        return null;
    }
}
