using Plumbmark.Engine.Bending;

namespace Plumbmark.Simulations;

/// <summary>A thousand bent parts straightened by the planner and by rules of thumb, on a metal that neither of them knows.</summary>
internal static class PressSimulation
{
    private const int Jobs = 1000;
    private const int Seed = 20260;
    private const int MostBites = 10;
    private const double Straight = 0.8e-3; // 1/32 in
    private const double PastStraight = 0.4e-3;
    private const double Doubt = 1.645 * PressJobs.ReadingError; // stop only when straight with 95 %: the rule every other verdict follows
    private const double ShiftInDeviations = 3;

    /// <summary>How one rule did on one job.</summary>
    public sealed record Result(
        string Rule,
        string Shape,
        double TrueLeft,
        double MostPast,
        int Bites,
        bool Stopped,
        bool FalseAlarm,
        double Strain
    )
    {
        /// <summary>Within 0.8 mm of straight in the end, and never more than 0.4 mm past it.</summary>
        public bool IsGood => Math.Abs(TrueLeft) <= Straight && MostPast <= PastStraight;
    }

    public static void Run(TextWriter output)
    {
        output.WriteLine(
            $"{Jobs} simulated press jobs twice, seed {Seed}; reading error {PressJobs.ReadingError * 1e3:F1} mm; at most {MostBites} bites."
        );
        output.WriteLine(
            "Metal: combined hardening with memory, yield +-20 %, bent by an accident first; rubbing supports, blocks that settle and give."
        );
        output.WriteLine("good = ends within 0.8 mm of straight and never more than 0.4 mm past it.");
        foreach (var readAtPart in (bool[])[true, false])
        {
            var results = new Result[Jobs][];
            Parallel.For(0, Jobs, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => results[i] = Job(i, readAtPart));
            output.WriteLine();
            output.WriteLine(
                readAtPart
                    ? "A. Travel read by a gauge on the part (blocks give up to 0.12 of what the part gives)."
                    : "B. Travel read at the ram (saddles, blocks and frame give 0.1 to 6 mm per tonne, and nobody knows how much)."
            );
            Print(output, [.. results.SelectMany(r => r)]);
        }
    }

    /// <summary>One job by every rule: the same part and the same luck in reading, only the rule differs.</summary>
    public static Result[] Job(int number, bool readAtPart)
    {
        var setUp = PressJobs.Next(new Random(Seed + number), readAtPart);
        return [.. PressRules.All.Select(r => Straighten(setUp, setUp.Bar.Copy(), r.Name, r.Rule, new Random(Seed + (31 * number))))];
    }

    private static Result Straighten(PressJobSetUp setUp, PressBar bar, string name, PressRule rule, Random luck)
    {
        double Read() => PressJobs.ReadingError * PressJobs.Normal(luck);
        var story = new PressStory
        {
            Handbook = setUp.Handbook,
            Belief = setUp.Model.Start,
            Left = -bar.Deflection + Read(),
        };
        var (first, most, stopped, alarm) = (story.Left, double.NegativeInfinity, false, false);
        while (story.Bites < MostBites && !stopped)
        {
            var asked = rule(story);
            var seat = story.Bites == 0 ? setUp.SeatLoss : 0;
            bar.Press(Math.Max(0, asked + Read() - seat), setUp.Friction, setUp.BlockGive);
            most = Math.Max(most, bar.Deflection);
            var left = -bar.Deflection + Read();
            var bite = new ObservedBite(asked, first - story.Left, story.Left - left);
            alarm |= name == PressRules.All[0].Name && Shifted(story.Belief, bite);
            story.Belief = name == PressRules.All[0].Name ? story.Belief.After(bite) : story.Belief;
            (story.SeenSpringBack, story.HasSet) = (bite.CameBackMetres, story.HasSet || first - left > 4 * PressJobs.ReadingError);
            (story.Left, story.Bites) = (left, story.Bites + 1);
            stopped = left <= Straight - Doubt;
        }

        return new(name, setUp.Shape, -bar.Deflection, most, story.Bites, stopped, alarm, bar.PlasticPath);
    }

    private static bool Shifted(BiteBelief belief, ObservedBite bite)
    {
        var expected = belief.SetForTravelMetres(bite.TravelMetres);
        var deviation = (expected.High - expected.Low) / (2 * 1.959964);
        return Math.Abs(bite.SetMetres - expected.Middle) > ShiftInDeviations * deviation;
    }

    private static void Print(TextWriter output, List<Result> results)
    {
        output.WriteLine($"{"rule", -26} {"good %", 7} {"past %", 7} {"not in time %", 14} {"median bites", 13} {"95 % bites", 11}");
        foreach (var (name, _) in PressRules.All)
        {
            output.WriteLine(Row(name, [.. results.Where(r => r.Rule == name)]));
        }

        var planner = results.Where(r => r.Rule == PressRules.All[0].Name).ToList();
        output.WriteLine();
        output.WriteLine("The planner by section:");
        foreach (var shape in planner.GroupBy(r => r.Shape).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            output.WriteLine(Row($"{shape.Key} ({shape.Count()})", [.. shape]));
        }

        output.WriteLine();
        output.WriteLine(
            $"Jobs in which the spring-back shift rule would have stopped a sound job: {100.0 * planner.Count(r => r.FalseAlarm) / planner.Count:F1} %"
        );
        output.WriteLine($"Largest strain path of an outer fibre, accident and straightening: {100 * planner.Max(r => r.Strain):F1} %");
    }

    private static string Row(string name, List<Result> all)
    {
        double Share(Func<Result, bool> which) => 100.0 * all.Count(which) / all.Count;
        var bites = all.Select(r => r.Bites).Order().ToArray();
        return $"{name, -26} {Share(r => r.IsGood), 7:F1} {Share(r => r.MostPast > PastStraight), 7:F1} "
            + $"{Share(r => !r.Stopped), 14:F1} {bites[bites.Length / 2], 13} {bites[(int)(0.95 * (bites.Length - 1))], 11}";
    }
}
