using System.Globalization;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>The plan: what to measure, in walking order, to be as sure as the person wants to be.</summary>
public sealed record PlanView
{
    private const double LongestMinutes = 120;

    /// <summary>The car.</summary>
    public required OpenCar Car { get; init; }

    /// <summary>The limits to choose from, each with the sentence of its source.</summary>
    public required IReadOnlyList<Choice> Choices { get; init; }

    /// <summary>The chosen one's value.</summary>
    public required string To { get; init; }

    /// <summary>A limit of one's own as typed.</summary>
    public required string Own { get; init; }

    /// <summary>Minutes for each kind as typed, with the field's name.</summary>
    public required IReadOnlyList<(string Field, string Label, string Value)> Minutes { get; init; }

    /// <summary>The plan; null when something is wrong in the form or no point is drawn.</summary>
    public required MeasuringPlan? Plan { get; init; }

    /// <summary>The plan in sections, drops first.</summary>
    public required IReadOnlyList<Section> Sections { get; init; }

    /// <summary>What is wrong in the form.</summary>
    public required FieldFaults Faults { get; init; }

    /// <summary>A limit to choose.</summary>
    /// <param name="Value">What the form sends.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Source">Whose it is and where it is from.</param>
    public sealed record Choice(string Value, string Name, string Source);

    /// <summary>Readings of one kind.</summary>
    /// <param name="Title">The kind.</param>
    /// <param name="Lines">Each reading with the address where its form stands ready.</param>
    public sealed record Section(string Title, IReadOnlyList<(string Words, string Address, int Times)> Lines);

    /// <summary>The page for a request.</summary>
    public static PlanView Of(CarRequest request)
    {
        var faults = new FieldFaults();
        var car = request.Car.File;
        var choices = ChoicesOf(car);
        var to =
            request.Query("to") is { Length: > 0 } asked && (asked == "own" || choices.Any(c => c.Value == asked))
                ? asked
                : choices[0].Value;
        var limits = LimitsOf(request, car, to, faults);
        var usual = new ReadingMinutes();
        var minutes = new ReadingMinutes(
            Number(request, "length", usual.Plan, faults),
            usual.Direct,
            Number(request, "height", usual.Height, faults),
            Number(request, "drop", usual.Drop, faults),
            Number(request, "first", usual.FirstDrop, faults)
        );
        var plan =
            faults.Any || car.Frame.Points.Count == 0
                ? null
                : request.Answers().PlanFor(request.Car, limits, new FloorOptions { Minutes = minutes });
        return new PlanView
        {
            Car = request.Car,
            Choices = choices,
            To = to,
            Own = request.Query("own"),
            Minutes =
            [
                ("first", "plan.minutes.first", Text(request, "first", minutes.FirstDrop)),
                ("drop", "plan.minutes.drop", Text(request, "drop", minutes.Drop)),
                ("length", "plan.minutes.length", Text(request, "length", minutes.Plan)),
                ("height", "plan.minutes.height", Text(request, "height", minutes.Height)),
            ],
            Plan = plan,
            Sections = plan is null ? [] : SectionsOf(plan, request.Car.Id),
            Faults = faults,
        };
    }

    /// <summary>The car's own limits first, then those of the trade, tightest first.</summary>
    private static IReadOnlyList<Choice> ChoicesOf(CarFile car)
    {
        var own = LimitsView.Words(car.Frame.Limits) is { } words
            ? new Choice("car", Inspection.Language.Texts.Say("plan.to.car"), words)
            : null;
        return
        [
            .. own is null ? (IEnumerable<Choice>)[] : [own],
            .. PracticeLimit.All.Select(
                (p, i) => new Choice($"practice-{i}", p.Name, $"{Inspection.Language.Texts.Say("limits.of-practice")} {p.Limits.Note}.")
            ),
        ];
    }

    private static Limits? LimitsOf(CarRequest request, CarFile car, string to, FieldFaults faults)
    {
        if (to.StartsWith("practice-", StringComparison.Ordinal))
        {
            return PracticeLimit.All[int.Parse(to["practice-".Length..], CultureInfo.InvariantCulture)].Limits;
        }

        return to != "own"
            ? car.Frame.Limits
            : LengthText
                .Read(request.Query("own"), car.Units)
                .Match<Limits?>(
                    length =>
                    {
                        if (length <= Length.Zero)
                        {
                            faults.Add("own", Inspection.Language.Texts.Say("plan.fault.limit"));
                        }

                        return new Limits(length, length, length);
                    },
                    refused =>
                    {
                        faults.Add("own", refused.Sentence);
                        return null;
                    }
                );
    }

    private static double Number(CarRequest request, string field, double usual, FieldFaults faults)
    {
        var typed = request.Query(field).Replace(',', '.');
        if (typed.Length == 0)
        {
            return usual;
        }

        if (
            double.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var minutes)
            && minutes is > 0 and <= LongestMinutes
        )
        {
            return minutes;
        }

        faults.Add(field, Inspection.Language.Texts.Say("plan.fault.minutes", request.Query(field), LongestMinutes));
        return usual;
    }

    private static string Text(CarRequest request, string field, double minutes) =>
        request.Query(field) is { Length: > 0 } typed ? typed : minutes.ToString("0.#", CultureInfo.InvariantCulture);

    private static IReadOnlyList<Section> SectionsOf(MeasuringPlan plan, long car)
    {
        IEnumerable<(string Title, Func<NextReading, bool> Has)> kinds =
        [
            ("plan.drops", r => r.Kind == "drop"),
            ("plan.lengths", r => r.Kind is "plan" or "repeat" or "direct"),
            ("plan.heights", r => r.Kind == "height"),
        ];
        return
        [
            .. kinds
                .Select(k => new Section(k.Title, [.. plan.Readings.Where(k.Has).Select(r => Line(r, car))]))
                .Where(s => s.Lines.Count > 0),
        ];
    }

    private static (string Words, string Address, int Times) Line(NextReading reading, long car)
    {
        var words = reading.Kind switch
        {
            "drop" => reading.Point!,
            "height" => reading.Point!,
            "repeat" => Inspection.Language.Texts.Say("plan.line.repeat", reading.From, reading.To),
            "direct" => Inspection.Language.Texts.Say("plan.line.direct", reading.From, reading.To),
            _ => Inspection.Language.Texts.Say("plan.line", reading.From, reading.To),
        };
        return (words, NextLine.AddressOf(reading, car, ""), reading.Times);
    }
}
