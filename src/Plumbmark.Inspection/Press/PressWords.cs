using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

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
            >= 9_950 => Texts.Say("press.kn", Texts.Number(newtons / 1000, "F0")),
            >= 995 => Texts.Say("press.kn", Texts.Number(newtons / 1000, "F1")),
            _ => $"{Math.Round(newtons / 10) * 10:F0} N",
        };

    /// <summary>What one line says.</summary>
    public string Line(LineFinding line) =>
        line.Finding.Match(
            few => Texts.Say("press.places-are-too-few-measure", line.Line.Name, few.Readings, few.Needed),
            straight => Texts.Say("press.straight-a-kink-below-would", line.Line.Name, Degrees(straight.SmallestAngleRadians)),
            kink => $"{line.Line.Name}: {Kink(kink.Bend)}{Sure(kink.Odds, Texts.Say("press.a-sweep"))}{Misfit(kink.Misfit)}",
            sweep => $"{line.Line.Name}: {Sweep(sweep.Bend)}{Sure(sweep.Odds, Texts.Say("press.a-kink"))}{Misfit(sweep.Misfit)}"
        );

    /// <summary>Everything else that the readings say: second plane, flanges, twist.</summary>
    public IReadOnlyList<string> More(PressFindings findings)
    {
        var said = new List<string>();
        if (findings.LinesDisagree)
        {
            said.Add(Texts.Say("press.two-lines-of-the-same"));
        }

        if (findings.SideBend is { } side)
        {
            said.Add(Texts.Say("press.there-is-a-bend-across", Degrees(side.AngleRadians), Text(side.CentreMetres)));
        }

        if (findings.Twist is { } twist)
        {
            said.Add(
                twist.IsSeen
                    ? Texts.Say("press.it-is-twisted-by-from", Degrees(twist.AngleRadians))
                    : Texts.Say("press.no-twist-shows-one-below", Degrees(2 * twist.UncertaintyRadians))
            );
        }

        return said;
    }

    /// <summary>Where blocks and ram go.</summary>
    public IReadOnlyList<string> SetUp(PressLayout layout)
    {
        var said = new List<string>
        {
            Texts.Say("press.blocks-apart-left-of-the", Text(layout.SpanMetres), Text(layout.LeftArmMetres), Text(layout.RightArmMetres)),
        };
        if (layout.RamMetres is { } ram)
        {
            said.Add(
                Texts.Say("press.ram-at-on-the-crown", Text(ram), Text(ram - layout.LeftArmMetres), Text(ram + layout.RightArmMetres))
            );
        }

        if (Math.Abs(layout.RightBlockHigherMetres) >= _show.Division.Metres / 2)
        {
            var (side, rise) =
                layout.RightBlockHigherMetres > 0
                    ? (Texts.Say("press.right"), layout.RightBlockHigherMetres)
                    : (Texts.Say("press.left"), -layout.RightBlockHigherMetres);
            said.Add(Texts.Say("press.pack-the-block-higher-so", side, Text(rise)));
        }

        if (layout.MoreRamStations.Count > 0)
        {
            said.Add(Texts.Say("press.it-is-a-sweep-bite", string.Join(" and ", layout.MoreRamStations.Select(Text))));
        }

        if (layout.Packer is { } packer)
        {
            said.Add(packer);
        }

        said.Add(Texts.Say("press.crown-up-under-the-ram"));
        return said;
    }

    /// <summary>What to expect of load, travel and strain.</summary>
    public IReadOnlyList<string> Expect(PressPlan plan)
    {
        var megapascals = Texts.Say(
            "press.to-mpa",
            Texts.Number(plan.Metal.Yield!.LowPascals / 1e6, "F0"),
            Texts.Number(plan.Metal.Yield.HighPascals / 1e6, "F0")
        );
        var said = new List<string>
        {
            Texts.Say(
                "press.yields-somewhere-from",
                char.ToUpperInvariant(plan.Metal.Name[0]),
                plan.Metal.Name[1..],
                megapascals,
                plan.Metal.Source
            ),
            Texts.Say(
                "press.it-begins-to-yield-at",
                Load(plan.Low.YieldLoadNewtons),
                Load(plan.High.YieldLoadNewtons),
                Text(plan.Low.YieldTravelMetres),
                Text(plan.High.YieldTravelMetres)
            ),
            Texts.Say(
                "press.it-folds-at-to-if",
                Load(plan.Low.CollapseLoadNewtons),
                Load(plan.High.CollapseLoadNewtons),
                Text(plan.HingeSetMetres)
            ),
            double.IsFinite(plan.StraighteningStrain)
                ? Texts.Say("press.bending-it-back-strains-the", Texts.Number(100 * plan.StraighteningStrain, "F1"))
                : Texts.Say("press.no-bending-back-gives-as"),
        };
        if (plan.Wall is { } wall && double.IsFinite(plan.WallSetMetres))
        {
            said.Add(Texts.Say("press.largest-set-of-one-bite", wall.Plate.Name, Text(plan.WallSetMetres)));
        }

        return said;
    }

    /// <summary>What a bite told.</summary>
    public string Told(LoggedBite bite)
    {
        var back = Text(bite.SpringBackMetres);
        return bite.SetNothing
            ? Texts.Say("press.nothing-stayed-all-of-it", back)
            : Texts.Say("press.stayed-sprang-back", Text(bite.SetMetres), back);
    }

    /// <summary>Why a bite or a job is stopped.</summary>
    public static string Stop(StopReason reason) =>
        reason switch
        {
            StopReason.Tick => Texts.Say("press.a-tick-was-heard-that"),
            StopReason.Flaking => Texts.Say("press.paint-or-scale-flaked-metal"),
            StopReason.LoadFell => Texts.Say("press.the-load-fell-while-the"),
            StopReason.WrongPlane => Texts.Say("press.the-part-moved-out-of"),
            StopReason.Buckled => Texts.Say("press.a-wall-buckled-or-was"),
            StopReason.SpringBackShifted => Texts.Say("press.the-spring-back-is-not"),
            StopReason.TooManyBites => Texts.Say("press.as-many-bites-as-you"),
            StopReason.StrainSpent => Texts.Say("press.the-next-bite-would-strain"),
            StopReason.PastStraight => Texts.Say("press.it-is-past-straight-do"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The headline of a state.</summary>
    public string Headline(PressState state) =>
        state.Match(
            refused => Texts.Say("press.do-not-press-this-part"),
            asking => Texts.Say("press.a-few-questions-first"),
            needs => Texts.Say("press.something-must-be-measured-first"),
            next => Texts.Say("press.press", Travel(next.Travel.TravelMetres)),
            stopped => Texts.Say("press.stop-take-it-out-of"),
            over => Texts.Say("press.the-job-ends-here"),
            straight => straight.IsTested ? Texts.Say("press.straight-and-the-crack-test") : Texts.Say("press.straight-stop-pressing")
        );

    /// <summary>The sentences under the headline.</summary>
    public IReadOnlyList<string> Sentences(PressReport report) =>
        report.State.Match<IReadOnlyList<string>>(
            refused => [.. refused.Refusals.SelectMany(r => new[] { $"{r.What} {r.Why}", r.Instead })],
            asking => [.. asking.Questions.Select(q => q.Sentence)],
            needs => needs.Missing,
            next => NextBite(report, next),
            stopped => [.. stopped.Reasons.Select(Stop), Texts.Say("press.clean-it-to-bare-metal")],
            over => [.. over.Reasons.Select(Stop), Texts.Say("press.replace-the-part-or-show")],
            straight => Straight(report, straight)
        );

    private List<string> NextBite(PressReport report, PressState.NextBite next)
    {
        var (travel, left) = (next.Travel, report.Log!.LeftMetres);
        var said = new List<string>();
        if (next.MeasureFirst)
        {
            said.Add(Texts.Say("press.it-reads-as-within-the"));
        }

        said.Add(Texts.Say("press.still-out-by-it-would", Text(left), Text(travel.StraightMetres.Low), Text(travel.StraightMetres.High)));
        said.Add(
            Texts.Say(
                "press.about-should-stay-to",
                Text(Math.Max(0, travel.SetMetres.Middle)),
                Text(Math.Max(0, travel.SetMetres.Low)),
                Text(Math.Max(0, travel.SetMetres.High))
            )
        );
        if (travel.MayGiveNothing)
        {
            said.Add(Texts.Say("press.it-may-well-give-nothing"));
        }

        if (report.Log.Belief.EarlyYield > BauschingerShare && report.Log.Bites.Any(b => !b.SetNothing))
        {
            said.Add(Texts.Say("press.it-yields-early-metal-that"));
        }

        said.Add(Texts.Say("press.hold-it-for-10-to"));
        return said;
    }

    private const double BauschingerShare = 0.25; // well above the 0.22 that is believed before any bite

    private List<string> Straight(PressReport report, PressState.Straight straight)
    {
        var limit = report.Job.Limits.Straight;
        var said = new List<string>
        {
            limit is { } known
                ? Texts.Say(
                    "press.out-by-within-the-chosen",
                    Text(report.Log!.LeftMetres),
                    known.AsTyped,
                    report.Job.Limits.Source == Car.LimitSource.Factory
                        ? Texts.Say("press.the-makers-limit")
                        : Texts.Say("press.not-a-factory-limit")
                )
                : Texts.Say("press.no-limit-is-known-so"),
        };
        said.AddRange(straight.IsTested ? [Texts.Say("press.mark-it-as-straightened-and")] : [Texts.Say("press.now-test-it-for-cracks")]);
        return said;
    }

    private string Kink(Bend bend) =>
        Texts.Say(
            "press.a-kink-of-at",
            Degrees(bend.AngleRadians),
            Degrees(2 * bend.AngleUncertaintyRadians),
            Text(bend.CentreMetres),
            _show.PlusMinus(2 * bend.CentreUncertaintyMetres)
        );

    private string Sweep(Bend bend) =>
        Texts.Say(
            "press.a-sweep-of-over-its",
            Degrees(bend.AngleRadians),
            Degrees(2 * bend.AngleUncertaintyRadians),
            Text(bend.LengthMetres),
            Text(bend.CentreMetres),
            _show.PlusMinus(2 * bend.CentreUncertaintyMetres)
        );

    private static string Degrees(double radians) => $"{Math.Abs(radians) * 180 / Math.PI:F2}°";

    private static string Sure(double odds, string other) => odds < 3 ? Texts.Say("press.it-could-as-well-be", other) : "";

    private static string Misfit(double misfit) => misfit > 4 ? Texts.Say("press.the-readings-fit-neither-well") : "";
}
