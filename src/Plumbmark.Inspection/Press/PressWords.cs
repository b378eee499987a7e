using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>What the press says, in trade words and in the unit of the car: no sentence about a job stands anywhere else.</summary>
public sealed class PressWords
{
    private readonly LengthDisplay _show;

    /// <summary>Words in a unit.</summary>
    /// <param name="units">Inches to a hundredth, or millimetres to a tenth: what a dial at the press shows.</param>
    public PressWords(LengthUnit units)
    {
        _show = new LengthDisplay(units == LengthUnit.Inch ? Length.FromInches(0.01m) : Length.FromMillimetres(0.1m));
    }

    /// <summary>A computed length with its unit, in metres.</summary>
    public string Text(double metres) => _show.Text(metres);

    /// <summary>A computed length without its unit, for an axis that names it.</summary>
    public string Number(double metres) => _show.Number(metres);

    /// <summary>One of the unit shown, in metres.</summary>
    public double UnitMetres => _show.Unit == LengthUnit.Inch ? 0.0254 : 0.001;

    /// <summary>The unit shown: in or mm.</summary>
    public string Unit => _show.Unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>A travel to press: rounded down to the dial, so that rounding never goes further.</summary>
    public string Travel(double metres) => _show.Text(metres - (_show.Division.Metres / 2));

    /// <summary>A load, N.</summary>
    public static string Load(double newtons) =>
        newtons switch
        {
            >= 9_950 => $"{newtons / 1000:F0} kN",
            >= 995 => $"{newtons / 1000:F1} kN",
            _ => $"{Math.Round(newtons / 10) * 10:F0} N",
        };

    /// <summary>What one line says.</summary>
    public string Line(LineFinding line) =>
        line.Finding.Match(
            few => $"{line.Line.Name}: {few.Readings} places are too few; measure at {few.Needed} or more.",
            straight =>
                $"{line.Line.Name}: straight. A kink below {Degrees(straight.SmallestAngleRadians)} would not show in these readings.",
            kink => $"{line.Line.Name}: {Kink(kink.Bend)}{Sure(kink.Odds, "a sweep")}{Misfit(kink.Misfit)}",
            sweep => $"{line.Line.Name}: {Sweep(sweep.Bend)}{Sure(sweep.Odds, "a kink")}{Misfit(sweep.Misfit)}"
        );

    /// <summary>Everything else that the readings say: second plane, flanges, twist.</summary>
    public IReadOnlyList<string> More(PressFindings findings)
    {
        var said = new List<string>();
        if (findings.LinesDisagree)
        {
            said.Add(
                "Two lines of the same plane turn by different amounts: one flange is bent by itself, or the part is twisted. Look before you press."
            );
        }

        if (findings.SideBend is { } side)
        {
            said.Add($"There is a bend across the ram as well: {Degrees(side.AngleRadians)} at {Text(side.CentreMetres)}.");
        }

        if (findings.Twist is { } twist)
        {
            said.Add(
                twist.IsSeen
                    ? $"It is twisted by {Degrees(twist.AngleRadians)} from end to end. A press will not cure that."
                    : $"No twist shows; one below {Degrees(2 * twist.UncertaintyRadians)} would not."
            );
        }

        return said;
    }

    /// <summary>Where blocks and ram go.</summary>
    public IReadOnlyList<string> SetUp(PressLayout layout)
    {
        var said = new List<string>
        {
            $"Blocks {Text(layout.SpanMetres)} apart: {Text(layout.LeftArmMetres)} left of the ram, {Text(layout.RightArmMetres)} right of it.",
        };
        if (layout.RamMetres is { } ram)
        {
            said.Add(
                $"Ram at {Text(ram)} on the crown, blocks at {Text(ram - layout.LeftArmMetres)} and {Text(ram + layout.RightArmMetres)}, all from the end you measured from."
            );
        }

        if (Math.Abs(layout.RightBlockHigherMetres) >= _show.Division.Metres / 2)
        {
            var (side, rise) =
                layout.RightBlockHigherMetres > 0 ? ("right", layout.RightBlockHigherMetres) : ("left", -layout.RightBlockHigherMetres);
            said.Add($"Pack the {side} block {Text(rise)} higher, so that both legs slope alike and the load is square.");
        }

        if (layout.MoreRamStations.Count > 0)
        {
            said.Add(
                $"It is a sweep: bite at the crown first, then in turn at {string.Join(" and ", layout.MoreRamStations.Select(Text))}, a little each time."
            );
        }

        if (layout.Packer is { } packer)
        {
            said.Add(packer);
        }

        said.Add("Crown up under the ram, soft saddles, blocks clamped.");
        return said;
    }

    /// <summary>What to expect of load, travel and strain.</summary>
    public IReadOnlyList<string> Expect(PressPlan plan)
    {
        var megapascals = $"{plan.Metal.Yield!.LowPascals / 1e6:F0} to {plan.Metal.Yield.HighPascals / 1e6:F0} MPa";
        var said = new List<string>
        {
            $"{char.ToUpperInvariant(plan.Metal.Name[0])}{plan.Metal.Name[1..]} yields somewhere from {megapascals} ({plan.Metal.Source}).",
            $"It begins to yield at {Load(plan.Low.YieldLoadNewtons)} to {Load(plan.High.YieldLoadNewtons)}, after {Text(plan.Low.YieldTravelMetres)} to {Text(plan.High.YieldTravelMetres)} of travel: up to there it springs back whole. Read at the ram, what blocks and press give comes on top.",
            $"It folds at {Load(plan.Low.CollapseLoadNewtons)} to {Load(plan.High.CollapseLoadNewtons)} if the metal does not harden. Beyond a set of {Text(plan.HingeSetMetres)} the load hardly rises: go by travel, never by the gauge.",
            double.IsFinite(plan.StraighteningStrain)
                ? $"Bending it back strains the outermost metal by about {100 * plan.StraighteningStrain:F1} %; the accident has used up about as much."
                : "No bending back gives as much set as this part is out by: the figures of its section, its length and its bend do not fit together.",
        };
        if (plan.Wall is { } wall && double.IsFinite(plan.WallSetMetres))
        {
            said.Add(
                $"Largest set of one bite before the {wall.Plate.Name} may buckle: {Text(plan.WallSetMetres)}. A close-fitting packer holds it."
            );
        }

        return said;
    }

    /// <summary>What a bite told.</summary>
    public string Told(LoggedBite bite)
    {
        var back = Text(bite.SpringBackMetres);
        return bite.SetNothing
            ? $"Nothing stayed: all of it sprang back, as it must up to the yield. The spring-back is {back} or more."
            : $"{Text(bite.SetMetres)} stayed, {back} sprang back.";
    }

    /// <summary>Why a bite or a job is stopped.</summary>
    public static string Stop(StopReason reason) =>
        reason switch
        {
            StopReason.Tick => "A tick was heard: that may be a crack.",
            StopReason.Flaking => "Paint or scale flaked: metal yielded there, and it may not be where you want it.",
            StopReason.LoadFell => "The load fell while the ram went on: something folds or cracks.",
            StopReason.WrongPlane => "The part moved out of the plane of the bend: the load is not square to it.",
            StopReason.Buckled => "A wall buckled or was marked.",
            StopReason.SpringBackShifted =>
                "The spring-back is not what the bites before told: something has changed, or the bite was misread.",
            StopReason.TooManyBites => "As many bites as you allowed. Each one uses up metal.",
            StopReason.StrainSpent => "The next bite would strain the metal more than the limit you chose.",
            StopReason.PastStraight => "It is past straight. Do not bend it back: that would be a second bending.",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The headline of a state.</summary>
    public string Headline(PressState state) =>
        state.Match(
            refused => "Do not press this part.",
            asking => "A few questions first.",
            needs => "Something must be measured first.",
            next => $"Press {Travel(next.Travel.TravelMetres)}.",
            stopped => "Stop. Take it out of the press and inspect it.",
            over => "The job ends here.",
            straight => straight.IsTested ? "Straight, and the crack test found nothing." : "Straight. Stop pressing."
        );

    /// <summary>The sentences under the headline.</summary>
    public IReadOnlyList<string> Sentences(PressReport report) =>
        report.State.Match<IReadOnlyList<string>>(
            refused => [.. refused.Refusals.SelectMany(r => new[] { $"{r.What} {r.Why}", r.Instead })],
            asking => [.. asking.Questions.Select(q => q.Sentence)],
            needs => needs.Missing,
            next => NextBite(report, next),
            stopped =>
                [
                    .. stopped.Reasons.Select(Stop),
                    "Clean it to bare metal and test it for cracks. Enter the test here; if it finds nothing the job can go on.",
                ],
            over => [.. over.Reasons.Select(Stop), "Replace the part, or show it to a competent person."],
            straight => Straight(report, straight)
        );

    private List<string> NextBite(PressReport report, PressState.NextBite next)
    {
        var (travel, left) = (next.Travel, report.Log!.LeftMetres);
        var said = new List<string>();
        if (next.MeasureFirst)
        {
            said.Add("It reads as within the limit already, but not surely. Measure it again before you press.");
        }

        said.Add(
            $"Still out by {Text(left)}. It would come straight at {Text(travel.StraightMetres.Low)} to {Text(travel.StraightMetres.High)} of travel; this stays under."
        );
        said.Add(
            $"About {Text(Math.Max(0, travel.SetMetres.Middle))} should stay ({Text(Math.Max(0, travel.SetMetres.Low))} to {Text(Math.Max(0, travel.SetMetres.High))})."
        );
        if (travel.MayGiveNothing)
        {
            said.Add("It may well give nothing: the first travel is all spring-back. Then it has told how much that is.");
        }

        if (report.Log.Belief.EarlyYield > BauschingerShare && report.Log.Bites.Any(b => !b.SetNothing))
        {
            said.Add(
                "It yields early: metal that was bent one way yields sooner the other way, and then springs back more from bite to bite."
            );
        }

        said.Add("Hold it for 10 to 30 seconds, let the load off slowly, and measure again after a few minutes.");
        return said;
    }

    private const double BauschingerShare = 0.25; // well above the 0.22 that is believed before any bite

    private List<string> Straight(PressReport report, PressState.Straight straight)
    {
        var limit = report.Job.Limits.Straight;
        var said = new List<string>
        {
            limit is { } known
                ? $"Out by {Text(report.Log!.LeftMetres)}, within the {known.AsTyped} chosen ({(report.Job.Limits.Source == Car.LimitSource.Factory ? "the maker's limit" : "not a factory limit")})."
                : "No limit is known, so this is no verdict; no bend can be read any more.",
        };
        said.AddRange(
            straight.IsTested
                ?
                [
                    "Mark it as straightened, and inspect it every year. Nothing found is not proof that nothing is there, and straight does not mean sound.",
                ]
                :
                [
                    "Now test it for cracks on bare metal, with dye or better with magnetic particles, and enter the test. Check rods and mate as well.",
                ]
        );
        return said;
    }

    private string Kink(Bend bend) =>
        $"a kink of {Degrees(bend.AngleRadians)} ± {Degrees(2 * bend.AngleUncertaintyRadians)} at {Text(bend.CentreMetres)} {_show.PlusMinus(2 * bend.CentreUncertaintyMetres)}.";

    private string Sweep(Bend bend) =>
        $"a sweep of {Degrees(bend.AngleRadians)} ± {Degrees(2 * bend.AngleUncertaintyRadians)} over {Text(bend.LengthMetres)}, its middle at {Text(bend.CentreMetres)} {_show.PlusMinus(2 * bend.CentreUncertaintyMetres)}.";

    private static string Degrees(double radians) => $"{Math.Abs(radians) * 180 / Math.PI:F2}°";

    private static string Sure(double odds, string other) => odds < 3 ? $" It could as well be {other}." : "";

    private static string Misfit(double misfit) =>
        misfit > 4 ? " The readings fit neither well: look for a second bend, or a misread gap." : "";
}
