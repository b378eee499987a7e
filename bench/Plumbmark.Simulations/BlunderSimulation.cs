using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Simulations;

/// <summary>One blunder of a known kind in an otherwise honest survey: how often the right reading or point and the right kind are named.</summary>
internal static class BlunderSimulation
{
    private static readonly int s_frames = int.Parse(
        Environment.GetEnvironmentVariable("FRAMES") ?? "500",
        System.Globalization.CultureInfo.InvariantCulture
    );
    private static readonly int s_series = int.Parse(
        Environment.GetEnvironmentVariable("SERIES") ?? "1",
        System.Globalization.CultureInfo.InvariantCulture
    );

    private sealed record Planted(string Subject, BlunderKind Kind, double SizeMetres, double? DetectableMetres);

    public static void Run(TextWriter output)
    {
        output.WriteLine($"{s_frames} random frames in each row, series {s_series}; priors and thresholds were chosen on series 7 and 8.");
        output.WriteLine(
            "One blunder in each survey; counted where its size exceeds the minimal detectable bias of its reading (alpha 0.001, beta 0.20)."
        );
        output.WriteLine(
            "right: reading or point, and kind, named; first: the same named or first in the list; subject: reading or point right (or one of two), kind not; wrong: something else named;"
        );
        output.WriteLine(
            "open: said to be provable but not locatable; silent: nothing said; unexplained: said that one or two slips do not account for it."
        );
        foreach (
            var (lengths, title) in new[]
            {
                (9, "thorough: 8 to 16 points, each in about 9 lengths"),
                (6, "usual: each in about 6 lengths"),
            }
        )
        {
            output.WriteLine($"\n{title}\n");
            output.WriteLine(
                $"{"blunder", -28}{"counted", 8}{"right %", 9}{"first %", 9}{"subject %", 11}{"wrong %", 9}{"open %", 8}{"silent %", 10}{"unexplained %", 15}{"ms", 7}"
            );
            All(output, lengths);
        }
    }

    private static void All(TextWriter output, int lengths)
    {
        Survey Any(Random r) => new(r, lengths);
        Survey Inches(Random r) => new(r, lengths, isInches: true);
        Survey Millimetres(Random r) => new(r, lengths, isInches: false);
        Row(output, "none", 1, Any, (s, r) => new Planted("", BlunderKind.FreeAmount, 0, null));
        Row(output, "one inch", 2, Inches, (s, r) => Step(s, r, BlunderKind.OneInch, 0.0254));
        Row(output, "ten inches", 3, Inches, (s, r) => Step(s, r, BlunderKind.TenInches, 0.254));
        Row(output, "one foot", 5, Inches, (s, r) => Step(s, r, BlunderKind.OneFoot, 0.3048));
        Row(output, "100 mm", 4, Millimetres, (s, r) => Step(s, r, BlunderKind.HundredMillimetres, 0.1));
        Row(output, "10 mm", 6, Millimetres, (s, r) => Step(s, r, BlunderKind.TenMillimetres, 0.01));
        Row(output, "digits swapped", 7, Any, DigitsSwapped);
        Row(output, "left and right swapped", 8, Any, SidesSwapped);
        Row(output, "direct entered as plan", 9, Any, DirectAsPlan);
        Row(output, "two rows swapped", 10, Any, RowsSwapped);
        Row(output, "free amount, 5 to 60 mm", 11, Any, (s, r) => Step(s, r, BlunderKind.FreeAmount, 0.005 + 0.055 * r.NextDouble()));
        Row(output, "bad drop, direct lengths too", 12, r => new Survey(r, lengths, hasDirect: true), BadDrop);
        Row(output, "bad drop, three drops each", 13, r => new Survey(r, lengths, drops: 3), BadDrop);
        Row(output, "mark moved half-way", 14, Any, MarkMoved);
        Row(output, "two readings, inch and foot", 15, Inches, Two);
    }

    private static void Row(TextWriter output, string name, int seed, Func<Random, Survey> measure, Func<Survey, Random, Planted?> plant)
    {
        if (Environment.GetEnvironmentVariable("ONLY") is { } only && !only.Split(';').Contains(name))
        {
            return;
        }

        var (counted, right, first, subject, wrong, tied, silent, unexplained) = (0, 0, 0, 0, 0, 0, 0, 0);
        var watch = new System.Diagnostics.Stopwatch();
        for (var f = 0; f < s_frames; f++)
        {
            var random = new Random(1_000_000 * s_series + 10_000 * seed + f);
            var survey = measure(random);
            if (
                NetworkAdjustment.Solve(survey.Network()) is not NetworkOutcome.Adjusted { Fit: var honest }
                || Plant(survey, honest, random, plant) is not { } planted
            )
            {
                continue;
            }

            if (NetworkAdjustment.Solve(survey.Network()).FitOrNull is not { } fit)
            {
                continue;
            }

            counted++;
            watch.Start();
            var outcome = BlunderSearch.Of(fit, survey.Hints());
            watch.Stop();
            switch (outcome)
            {
                case BlunderOutcome.Named { Best: var best }:
                    var names = Names(best);
                    var isSubject = names == planted.Subject;
                    var isKind = IsRight(best, planted);
                    right += isSubject && isKind ? 1 : 0;
                    first += isSubject && isKind ? 1 : 0;
                    var isPart = planted.Subject.Length > 0 && names.Split('+').All(planted.Subject.Split('+').Contains);
                    subject += (isSubject && !isKind) || (isPart && !isSubject) ? 1 : 0;
                    wrong += isSubject || isPart ? 0 : 1;
                    if (Environment.GetEnvironmentVariable("SHOW") == name && !(isSubject && isKind))
                    {
                        Console.Error.WriteLine(
                            $"{f}: planted {planted} named {names} {string.Join(',', best.Doubted.Select(d => $"{d.Kind} {d.SizeMetres * 1000:F2}"))} odds {best.Odds:F1} kind {best.KindOdds:F1}"
                        );
                    }

                    break;
                case BlunderOutcome.ProvableNotLocatable t:
                    tied++;
                    first += t.Candidates.Count > 0 && IsRight(t.Candidates[0], planted) ? 1 : 0;
                    if (Environment.GetEnvironmentVariable("SHOW") == name)
                    {
                        var inTie = fit.TiedReadings().Any(g => g.Contains(planted.Subject));
                        var mdb = honest.Readings.FirstOrDefault(r => r.Id == planted.Subject)?.MinimalDetectableMetres * 1000;
                        var r = honest.Readings.FirstOrDefault(r => r.Id == planted.Subject)?.RedundancyNumber;
                        Console.Error.WriteLine(
                            $"{f}: tied={inTie} mdb {mdb:F1} r {r:F2} size {planted.SizeMetres * 1000:F1} {planted.Subject} : {string.Join(" | ", t.Candidates.Take(3).Select(c => string.Join("+", c.Doubted.Select(d => (d.ReadingId ?? d.Point) + " " + d.Kind)) + $" {c.Probability:F3} k{c.KindOdds:F1}"))}"
                        );
                    }

                    break;
                case BlunderOutcome.Unexplained u:
                    unexplained++;
                    first += IsRight(u.Best[0], planted) ? 1 : 0;
                    if (Environment.GetEnvironmentVariable("SHOW") == name)
                    {
                        Console.Error.WriteLine(
                            $"{f}: planted {planted} unexplained fitP {u.Best[0].FitProbability} {u.Best[0].Doubted[0]}"
                        );
                    }

                    break;
                default:
                    silent++;
                    if (Environment.GetEnvironmentVariable("SHOW") == name && planted.Subject.Length > 0)
                    {
                        var mdb = honest.Readings.FirstOrDefault(r => r.Id == planted.Subject)?.MinimalDetectableMetres * 1000;
                        Console.Error.WriteLine(
                            $"{f}: silent mdb {mdb:F1} size {planted.SizeMetres * 1000:F1} P {fit.ChiSquareProbability:E1} w {fit.Readings.Max(r => Math.Abs(r.Standardised ?? 0)):F1} own {fit.Readings.FirstOrDefault(r => r.Id == planted.Subject)?.Standardised:F1}"
                        );
                    }

                    break;
            }
        }

        double Share(int n) => 100.0 * n / Math.Max(1, counted);
        output.WriteLine(
            $"{name, -28}{counted, 8}{Share(right), 9:F1}{Share(first), 9:F1}{Share(subject), 11:F1}{Share(wrong), 9:F1}{Share(tied), 8:F1}{Share(silent), 10:F1}{Share(unexplained), 15:F1}{watch.Elapsed.TotalMilliseconds / Math.Max(1, counted), 7:F1}"
        );
    }

    private static string Names(Explanation explanation) =>
        string.Join('+', explanation.Doubted.Select(d => d.ReadingId ?? d.Point!).Order(StringComparer.Ordinal));

    private static bool IsRight(Explanation explanation, Planted planted) =>
        Names(explanation) == planted.Subject && explanation.Doubted.All(d => d.Kind == planted.Kind || planted.Subject.Contains('+'));

    // Only what exceeds the minimal detectable bias is counted.
    private static Planted? Plant(Survey survey, NetworkFit honest, Random random, Func<Survey, Random, Planted?> plant)
    {
        if (plant(survey, random) is not { } planted)
        {
            return null;
        }

        if (planted.Subject.Length == 0 || planted.DetectableMetres is not null)
        {
            return planted.SizeMetres >= (planted.DetectableMetres ?? 0) ? planted : null;
        }

        var ids = planted.Subject.Split('+');
        return ids.All(id =>
            honest.Readings.FirstOrDefault(r => r.Id == id)?.MinimalDetectableMetres is { } m && Math.Abs(planted.SizeMetres) > m
        )
            ? planted
            : null;
    }

    private static Planted? Step(Survey survey, Random random, BlunderKind kind, double size)
    {
        var plans = survey.Readings.OfType<PlanDistance>().ToList();
        var reading = plans[random.Next(plans.Count)];
        var sign = random.Next(2) == 0 ? 1 : -1;
        var typed = survey.Typed[reading.Id];
        var step =
            typed.Unit == LengthUnit.Inch ? Length.FromInches((decimal)(size / 0.0254)) : Length.FromMillimetres((decimal)(size * 1000));
        var entered = (sign > 0 ? typed + step : typed - step);
        entered = kind is BlunderKind.FreeAmount ? Rounded(entered, survey) : entered;
        if (entered <= Length.Zero)
        {
            return null;
        }

        survey.Enter(reading.Id, Retype(entered));
        return new Planted(reading.Id, kind, size, null);
    }

    private static Length Rounded(Length length, Survey survey) =>
        length.Unit == LengthUnit.Inch
            ? Length.FromFraction(Rational.Of((long)Math.Round(length.Inches * 16), 16), LengthUnit.Inch)
            : Length.FromMillimetres(Math.Round((decimal)length.Millimetres));

    private static Length Retype(Length length) =>
        LengthText.Read(length.ToString(), length.Unit).Match(l => l, _ => throw new InvalidOperationException(length.ToString()));

    private static Planted? DigitsSwapped(Survey survey, Random random)
    {
        var plans = survey.Readings.OfType<PlanDistance>().ToList();
        var reading = plans[random.Next(plans.Count)];
        var typed = survey.Typed[reading.Id];
        var swaps = LengthSlips.Of(typed).Where(s => s.Kind == BlunderKind.DigitsSwapped && s.Believed.Metres is > 0.05 and < 6).ToList();
        if (swaps.Count == 0)
        {
            return null;
        }

        var entered = swaps[random.Next(swaps.Count)].Believed;
        survey.Enter(reading.Id, entered);
        return new Planted(reading.Id, BlunderKind.DigitsSwapped, Math.Abs(entered.Metres - typed.Metres), null);
    }

    private static Planted? SidesSwapped(Survey survey, Random random)
    {
        var plans = survey.Readings.OfType<PlanDistance>().Where(o => o.From[..^2] != o.To[..^2]).ToList();
        var reading = plans[random.Next(plans.Count)];
        string Other(string id) => id[..^1] + (id[^1] == 'L' ? 'R' : 'L');
        var (from, to) = random.Next(3) switch
        {
            0 => (Other(reading.From), reading.To),
            1 => (reading.From, Other(reading.To)),
            _ => (Other(reading.From), Other(reading.To)),
        };
        var entered = survey.ReadPlan(from, to);
        var size = Math.Abs(entered.Metres - reading.ValueMetres);
        survey.Enter(reading.Id, entered);
        return new Planted(reading.Id, BlunderKind.SidesSwapped, size, null);
    }

    private static Planted? DirectAsPlan(Survey survey, Random random)
    {
        var plans = survey.Readings.OfType<PlanDistance>().ToList();
        var reading = plans[random.Next(plans.Count)];
        var entered = survey.ReadDirect(reading.From, reading.To);
        var size = Math.Abs(entered.Metres - reading.ValueMetres);
        survey.Enter(reading.Id, entered);
        return new Planted(reading.Id, BlunderKind.PlanDirectConfused, size, null);
    }

    private static Planted? RowsSwapped(Survey survey, Random random)
    {
        var plans = survey.Readings.OfType<PlanDistance>().ToList();
        var k = random.Next(plans.Count - 1);
        var (a, b) = (plans[k], plans[k + 1]);
        var (ta, tb) = (survey.Typed[a.Id], survey.Typed[b.Id]);
        survey.Enter(a.Id, tb);
        survey.Enter(b.Id, ta);
        var subject = string.Join('+', new[] { a.Id, b.Id }.Order(StringComparer.Ordinal));
        return new Planted(subject, BlunderKind.RowsSwapped, Math.Abs(ta.Metres - tb.Metres), null);
    }

    private static Planted? BadDrop(Survey survey, Random random)
    {
        var spot = survey.Spots[random.Next(survey.Spots.Count)];
        var (angle, size) = (6.2832 * random.NextDouble(), 0.004 + 0.02 * random.NextDouble());
        var detectable = DetectableShift(survey, spot.Id, angle);
        survey.SpoilDrop(spot.Id, size * Math.Cos(angle), size * Math.Sin(angle));
        return new Planted(spot.Id, BlunderKind.PointOff, size, detectable);
    }

    // Two numbers are wrong at once: λ₀ for two degrees of freedom. Repeated drops are judged among themselves (one of n against the mean of the others);
    // a single one by what a shift of a millimetre adds to the sum of squares.
    private static double DetectableShift(Survey survey, string point, double angle)
    {
        const double Probe = 0.001;
        var lambda = BaardaReliability.Lambda0(0.001, 0.2, 2);
        var network = survey.Network();
        var drops = 1 + network.Observations.OfType<DropShift>().Count(o => o.Point == point);
        if (drops > 1)
        {
            return Survey.Drop * Math.Sqrt(lambda * drops / (drops - 1));
        }

        if (NetworkAdjustment.Solve(network).FitOrNull is not { } fit)
        {
            return double.PositiveInfinity;
        }

        var changes = survey.ChangesBy(point, Probe * Math.Cos(angle), Probe * Math.Sin(angle));
        var spoilt = network.Observations.Select(o =>
            o with
            {
                ValueMetres = fit.Reading(o.Id).AdjustedMetres + changes.GetValueOrDefault(o.Id),
            }
        );
        var seen = NetworkAdjustment.Solve(new Network(network.Points, spoilt, network.Tools, network.MirrorPairs)).FitOrNull!;
        return Probe * Math.Sqrt(lambda / seen.WeightedSquares);
    }

    private static Planted? MarkMoved(Survey survey, Random random)
    {
        var spot = survey.Spots[random.Next(survey.Spots.Count)];
        var touching = survey.Readings.OfType<PlanDistance>().Where(o => o.From == spot.Id || o.To == spot.Id).ToList();
        if (touching.Count < 6)
        {
            return null;
        }

        var before = touching.Take(touching.Count / 2).Select(o => (o.Id, survey.Typed[o.Id])).ToList();
        var (angle, size) = (6.2832 * random.NextDouble(), 0.006 + 0.02 * random.NextDouble());
        survey.SpoilDrop(spot.Id, size * Math.Cos(angle), size * Math.Sin(angle));
        before.ForEach(b => survey.Enter(b.Id, b.Item2));
        return new Planted(spot.Id, BlunderKind.PointOff, size, 0.006);
    }

    private static Planted? Two(Survey survey, Random random)
    {
        var plans = survey.Readings.OfType<PlanDistance>().ToList();
        var a = plans[random.Next(plans.Count)];
        var b = plans[random.Next(plans.Count)];
        if (a.Id == b.Id || Step2(survey, a, 0.0254) is not true || Step2(survey, b, 0.3048) is not true)
        {
            return null;
        }

        var subject = string.Join('+', new[] { a.Id, b.Id }.Order(StringComparer.Ordinal));
        return new Planted(subject, BlunderKind.OneInch, 0.0254, null);
    }

    private static bool Step2(Survey survey, PlanDistance reading, double size)
    {
        var typed = survey.Typed[reading.Id];
        var step =
            typed.Unit == LengthUnit.Inch ? Length.FromInches((decimal)(size / 0.0254)) : Length.FromMillimetres((decimal)(size * 1000));
        survey.Enter(reading.Id, Retype(typed + step));
        return true;
    }
}
