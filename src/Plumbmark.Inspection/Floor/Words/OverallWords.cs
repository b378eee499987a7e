using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Verdicts;
using Plumbmark.Inspection.Language;

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
            Verdict.True => Texts.Say("floor.overall.the-frame-is-true"),
            Verdict.Out => Texts.Say("floor.overall.the-frame-is-out"),
            _ when of.NoFigure.Count > 0 => Texts.Say("floor.overall.cant-tell-yet-lengths-contradict"),
            _ when of.Suspects.Any(s => !s.IsSettled) && of.Evaluation is not null => Texts.Say("floor.overall.cant-tell-yet-one-reading"),
            _ when of.Evaluation is not null && !of.HasLimit => Texts.Say("floor.overall.cant-tell-yet-no-limit"),
            _ => Texts.Say("floor.overall.cant-tell-yet"),
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
            yield return Texts.Say("floor.overall.the-books-figure-for-is", doubted.Id, doubted.NominalDoubt!.TrimEnd('.'));
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
            yield return Texts.Say(
                "floor.overall.is-out-by-the-limit",
                CheckWords.Subject(check),
                words.Size(check.ValueMetres),
                words.SureToWords(check.UMetres),
                CheckWords.Limit(check, words)
            );
        }

        if (output.Count > MostOfOneKind)
        {
            yield return Texts.Say(
                "floor.overall.out-the-table-has-them",
                Texts.Count("floor.overall.more-checks-are", output.Count - MostOfOneKind)
            );
        }

        foreach (var sentence in WhatItLooksLike(evaluation, words))
        {
            yield return sentence;
        }

        if (!output.Any(c => c.MustBeTrue))
        {
            yield return Texts.Say("floor.overall.no-suspension-spring-or-steering");
        }
    }

    private static IEnumerable<string> WhyTrue(OverallCase of)
    {
        var needed = of.Checks.Count(c => c.MustBeTrue);
        var kind = of.Car.Frame.Points.Any(Roles.Matters)
            ? Texts.Say("floor.overall.suspension-spring-and-steering-check")
            : Texts.Say("floor.overall.check");
        yield return Texts.Say("floor.overall.every-is-within-its-limit", kind, Texts.Count("floor.overall.checks", needed));
        if (of.Car.Frame.Limits?.Source == LimitSource.Practice)
        {
            yield return Texts.Say("floor.overall.the-limits-are-the-trades");
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
            yield return Texts.Say(
                "floor.overall.reads-too-close-to-the",
                CheckWords.Subject(check),
                words.Size(check.ValueMetres),
                words.SureToWords(check.UMetres),
                CheckWords.Limit(check, words)
            );
        }

        if (open.Count > MostOfOneKind)
        {
            yield return Texts.Say("floor.overall.as-close", Texts.Count("floor.overall.more-checks-are", open.Count - MostOfOneKind));
        }

        foreach (var sentence in BlindSpotWords.Together(evaluation.Blind, words))
        {
            yield return sentence;
        }

        if (of.Next.Count > 0)
        {
            yield return Texts.Say("floor.overall.worth-most-now", PlanWords.Short(of.Next[0]));
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
            yield return Texts.Say(
                "floor.overall.reads-by-itself-beyond-the",
                CheckWords.Subject(check),
                words.Size(check.ValueMetres),
                words.SureToWords(check.UMetres),
                CheckWords.Limit(check, words),
                judged
            );
        }

        if (alone.Count > MostOfOneKind)
        {
            yield return Texts.Say(
                "floor.overall.like-that-the-table-has",
                Texts.Count("floor.overall.more-checks-read", alone.Count - MostOfOneKind)
            );
        }
    }

    /// <summary>Without book figures both sides bent alike look sound.</summary>
    private static bool CannotSeeSymmetric(FrameEvaluation evaluation) =>
        evaluation.Frame.Pairs.Count > 0 && !evaluation.Contrasts.All.Any(c => c.IsBook);

    private static string SpreadOut(double factor) =>
        Texts.Say("floor.overall.the-readings-disagree-times-as", Texts.Number(factor, "0.0"));

    private static string NoReading => Texts.Say("floor.overall.no-reading-has-been-taken");

    private static string NotTogether => Texts.Say("floor.overall.there-are-too-few-readings");

    private static string NoLimit => Texts.Say("floor.overall.no-limit-is-known-so");

    private static string SomeLimitMissing => Texts.Say("floor.overall.for-some-checks-no-limit");

    private static string DoubtMatters => Texts.Say("floor.overall.the-numbers-below-leave-it");

    private static string DoubtDoesNotMatter => Texts.Say("floor.overall.the-verdict-is-the-same");
}
