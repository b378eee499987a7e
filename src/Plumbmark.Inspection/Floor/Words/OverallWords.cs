using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor;

/// <summary>The answer on the frame as a whole and its reasons, in trade words, most important first.</summary>
internal static class OverallWords
{
    private const int MostOfOneKind = 3; // of like reasons; the checks table has them all

    public static OverallAnswer Answer(OverallCase of, LengthWords words)
    {
        var verdict = of.Verdict;
        return new OverallAnswer(
            verdict,
            Headline(of, verdict),
            [.. Why(of, verdict, words).Distinct(StringComparer.Ordinal)],
            of.Floating
        );
    }

    private static string Headline(OverallCase of, Verdict verdict) =>
        verdict switch
        {
            Verdict.True => "The frame is true.",
            Verdict.Out => "The frame is out.",
            _ when of.NoFigure.Count > 0 => "Can't tell yet: lengths contradict each other.",
            _ when of.Suspects.Any(s => !s.IsSettled) && of.Evaluation is not null => "Can't tell yet: one reading to take again first.",
            _ when of.Evaluation is not null && !of.HasLimit => "Can't tell yet: no limit is known.",
            _ => "Can't tell yet.",
        };

    private static IEnumerable<string> Why(OverallCase of, Verdict verdict, LengthWords words)
    {
        var settled = verdict != Verdict.CannotTellYet;
        foreach (var suspect in of.Suspects.Take(MostOfOneKind))
        {
            yield return suspect.Sentence;
        }

        if (of.Suspects.Any(s => !s.IsSettled) && of.Evaluation is not null)
        {
            yield return settled ? DoubtDoesNotMatter : DoubtMatters;
        }

        if (of.Evaluation is not { } evaluation)
        {
            foreach (var sentence in of.NoFigure.DefaultIfEmpty(of.Car.StandingReadings.Any() ? NotTogether : NoReading))
            {
                yield return sentence;
            }

            foreach (var sentence in of.Comparisons.Take(MostOfOneKind).Select(c => c.Sentence))
            {
                yield return sentence;
            }

            yield break;
        }

        foreach (var sentence in of.NoFigure)
        {
            yield return sentence;
        }

        var reasons = verdict switch
        {
            Verdict.Out => WhyOut(of, evaluation, words),
            Verdict.True => WhyTrue(of).Concat(OutAlone(of, words)),
            _ => WhyOpen(of, evaluation, words),
        };
        foreach (var reason in reasons)
        {
            yield return reason;
        }

        if (evaluation.Spread > 1 && of.NoFigure.Count == 0)
        {
            yield return SpreadOut(evaluation.Spread);
        }

        foreach (var doubted in of.Car.Frame.Points.Where(p => p.Nominal is not null && p.NominalDoubt is not null))
        {
            yield return $"The book's figure for {doubted.Id} is left out: {doubted.NominalDoubt!.TrimEnd('.')}.";
        }

        if (CannotSeeSymmetric(evaluation) && verdict != Verdict.Out)
        {
            yield return OverallAnswer.AlikeOnBothSides;
        }
    }

    private static IEnumerable<string> WhyOut(OverallCase of, FrameEvaluation evaluation, LengthWords words)
    {
        var output = CheckRule.OutAfterCounting(of.Checks);
        foreach (var check in output.OrderByDescending(c => Math.Abs(c.ValueMetres) / c.LimitMetres).Take(MostOfOneKind))
        {
            yield return $"{CheckWords.Subject(check)} is out by {words.Size(check.ValueMetres)}, {words.SureToWords(check.UMetres)}; the limit is {CheckWords.Limit(check, words)}.";
        }

        if (output.Count > MostOfOneKind)
        {
            yield return $"{Words.Count(output.Count - MostOfOneKind, "more check is", "more checks are")} out; the table has them.";
        }

        foreach (var sentence in WhatItLooksLike(evaluation, words))
        {
            yield return sentence;
        }

        if (!output.Any(c => c.MustBeTrue))
        {
            yield return "No suspension, spring or steering point is among them.";
        }
    }

    private static IEnumerable<string> WhyTrue(OverallCase of)
    {
        var needed = of.Checks.Count(c => c.MustBeTrue);
        var kind = of.Car.Frame.Points.Any(Roles.Matters) ? "suspension, spring and steering check" : "check";
        yield return $"Every {kind} is within its limit ({Words.Count(needed, "check")}), and damage beyond a limit could not hide from these readings.";
        if (of.Car.Frame.Limits?.Source == LimitSource.Practice)
        {
            yield return "The limits are the trade's, not the maker's.";
        }
    }

    private static IEnumerable<string> WhyOpen(OverallCase of, FrameEvaluation evaluation, LengthWords words)
    {
        foreach (var group in of.Floating)
        {
            yield return group.Sentence;
        }

        if (!of.HasLimit)
        {
            yield return NoLimit;
            yield break;
        }

        if (of.Checks.Any(c => c.MustBeTrue && c.LimitMetres is null))
        {
            yield return SomeLimitMissing;
        }

        foreach (var sentence in OutAlone(of, words).Concat(WhatItLooksLike(evaluation, words)))
        {
            yield return sentence;
        }

        var open = of
            .Checks.Where(c => c is { MustBeTrue: true, Verdict: Verdict.CannotTellYet })
            .OrderBy(c => c.ProbabilityWithin)
            .ToList();
        foreach (var check in open.Take(MostOfOneKind))
        {
            yield return $"{CheckWords.Subject(check)} reads {words.Size(check.ValueMetres)}, {words.SureToWords(check.UMetres)}: too close to the limit of {CheckWords.Limit(check, words)} to say.";
        }

        if (open.Count > MostOfOneKind)
        {
            yield return $"{Words.Count(open.Count - MostOfOneKind, "more check is", "more checks are")} as close.";
        }

        foreach (var sentence in BlindSpotWords.Together(evaluation.Blind, words))
        {
            yield return sentence;
        }

        if (of.Next.Count > 0)
        {
            yield return $"Worth most now: {PlanWords.Short(of.Next[0])}.";
        }
    }

    /// <summary>The damage that explains the readings best, and for a bent point whether it matters on the road.</summary>
    private static IEnumerable<string> WhatItLooksLike(FrameEvaluation evaluation, LengthWords words) =>
        DamageReport.IsClaimed(evaluation.Explanations)
            ? evaluation
                .Explanations[0]
                .Parts.SelectMany(p => new[] { DamageWords.Sentence(p, words), NearbyWords.Of(evaluation, p, words) })
                .OfType<string>()
            : [];

    /// <summary>
    /// Checks that would be out if they were the only ones: among many, one of a sound frame reads like that now and then, and the person who sees
    /// "out" in the table must be told why the frame is not.
    /// </summary>
    private static IEnumerable<string> OutAlone(OverallCase of, LengthWords words)
    {
        var alone = of.Checks.Where(c => c.Verdict == Verdict.Out).OrderBy(c => c.ProbabilityWithin).ToList();
        var judged = of.Checks.Count(c => c.Verdict is not null);
        foreach (var check in alone.Take(MostOfOneKind))
        {
            yield return $"{CheckWords.Subject(check)} reads {words.Size(check.ValueMetres)}, {words.SureToWords(check.UMetres)}: by itself beyond the limit of {CheckWords.Limit(check, words)}. Of {judged} checks on a sound frame one may read like that by chance, so it calls for a second look and not yet for a verdict.";
        }

        if (alone.Count > MostOfOneKind)
        {
            yield return $"{Words.Count(alone.Count - MostOfOneKind, "more check reads", "more checks read")} like that; the table has them.";
        }
    }

    /// <summary>Without book figures both sides bent alike look sound.</summary>
    private static bool CannotSeeSymmetric(FrameEvaluation evaluation) =>
        evaluation.Frame.Pairs.Count > 0 && !evaluation.Contrasts.All.Any(c => c.IsBook);

    private static string SpreadOut(double factor) =>
        $"The readings disagree {factor:0.0} times as much as the tools explain, so everything is taken to be that much less sure.";

    private const string NoReading = "No reading has been taken yet.";

    private const string NotTogether = "There are too few readings to put the points together yet.";

    private const string NoLimit =
        "No limit is known, so there are numbers and no verdict. Enter the book's limit, or choose what the trade uses.";

    private const string SomeLimitMissing = "For some checks no limit is known; they have a number and no verdict.";

    private const string DoubtMatters =
        "The numbers below leave it out; whether the frame is out or true hangs on it, so nothing is said before it is measured again.";

    private const string DoubtDoesNotMatter = "The verdict is the same with what is doubted and without it.";
}
