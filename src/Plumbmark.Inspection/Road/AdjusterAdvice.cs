using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

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
                    [Texts.Say("road.adjuster-advice.on-the-no-setting-can", RoadNames.Of(s.Side))]
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
            var sentence = Texts.Say("road.adjuster-advice.on-the-the-suspension-does", RoadNames.Of(side));
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
            .Select(s =>
                Texts.Say(
                    "road.adjuster-advice.from-to",
                    s.Adjuster.Id,
                    display.SignedLength(s.FromMetres),
                    display.SignedLength(s.ToMetres)
                )
            )
            .ToList();
        var how = moves.Count == 0 ? Texts.Say("road.adjuster-advice.nothing-needs-setting") : string.Join(", ", moves);
        var open = angles
            .Where(a => a.Verdict == Verdict.CannotTellYet)
            .Select(a => Texts.Say("road.adjuster-advice.is-only-known-to", RoadNames.Of(a.Kind), RoadDisplay.Size(2 * a.U)))
            .ToList();
        var left = angles
            .Where(a => a.Verdict == Verdict.Out)
            .Select(a => Texts.Say("road.adjuster-advice.beyond-its-limit", RoadNames.Of(a.Kind), RoadDisplay.Size(a.LeftOver)));
        return restored switch
        {
            true => Texts.Say("road.adjuster-advice.on-the-the-adjusters-reach", RoadNames.Of(side), how),
            false => Texts.Say("road.adjuster-advice.on-the-the-adjusters-cannot", RoadNames.Of(side), how, string.Join(", ", left)),
            null when open.Count > 0 => Texts.Say(
                "road.adjuster-advice.on-the-it-cant-be",
                RoadNames.Of(side),
                string.Join(", ", open),
                how
            ),
            null => Texts.Say("road.adjuster-advice.on-the-nearest-to-the", RoadNames.Of(side), how),
        };
    }

    // What is on the car is a fact, whatever is still open.
    private static IEnumerable<string> Fitted(List<AdjusterSetting> set, RoadDisplay display) =>
        set.Where(s => s.Adjuster.Usual is { } usual && Math.Abs(s.FromMetres) > usual.Metres + SameMetres)
            .Select(s =>
                Texts.Say(
                    "road.adjuster-advice.is-set-at-now-beyond",
                    RoadSentences.Capital(s.Adjuster.Id),
                    display.SignedLength(s.FromMetres),
                    s.Adjuster.Usual!.Value.AsTyped
                )
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
            yield return Texts.Say(
                "road.adjuster-advice.would-go-to-beyond-the",
                RoadSentences.Capital(s.Adjuster.Id),
                display.SignedLength(s.ToMetres),
                s.Adjuster.Usual!.Value.AsTyped
            );
        }

        foreach (var a in angles.Where(a => a.Kind == FigureKind.Camber && Math.Abs(a.After - a.Before) > TellTaleCamber))
        {
            yield return Texts.Say("road.adjuster-advice.it-takes-of-camber-more", RoadDisplay.Size(a.After - a.Before));
        }

        foreach (var s in set.Where(s => s.Adjuster is { Kind: AdjusterKind.Shims, Step: not null }))
        {
            if (
                PartnerOf(s.Adjuster, other) is { } partner
                && Math.Abs(partner - s.ToMetres) > (2 * s.Adjuster.Step!.Value.Metres) + SameMetres
            )
            {
                yield return Texts.Say(
                    "road.adjuster-advice.and-its-partner-would-differ",
                    RoadSentences.Capital(s.Adjuster.Id),
                    display.LengthSize(partner - s.ToMetres)
                );
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
