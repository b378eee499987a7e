using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>The plan as a tick list for paper.</summary>
public static class FloorPlanText
{
    /// <summary>The plan in walking order, a box before each reading and room for its value.</summary>
    public static string Of(CarFile car, MeasuringPlan plan)
    {
        var text = new StringBuilder($"{car.Car.Name}\n\n{plan.Sentence}\n");
        text.Append(Texts.Say("floor.plan.level-the-frame-on-rated"));
        Section(
            text,
            Texts.Say("floor.plan-text.drops"),
            plan.Readings.Where(r => r.Kind == "drop").Select(r => $"{r.Point, -10} x {r.Times}")
        );
        Section(
            text,
            Texts.Say("floor.plan-text.lengths"),
            plan.Readings.Where(r => r.Kind is "plan" or "repeat" or "direct").Select(Length)
        );
        Section(
            text,
            Texts.Say("floor.plan-text.heights"),
            plan.Readings.Where(r => r.Kind == "height").Select(r => $"{r.Point, -24} ____________")
        );
        return text.ToString();
    }

    private static string Length(NextReading reading)
    {
        var note = reading.Kind switch
        {
            "repeat" => Texts.Say("floor.plan.once-more"),
            "direct" => Texts.Say("floor.plan.point-to-point"),
            _ => "",
        };
        return $"{reading.From, -10} to {reading.To, -10} ____________{note}";
    }

    private static void Section(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
        {
            return;
        }

        text.Append($"\n{heading}\n");
        foreach (var line in all)
        {
            text.Append($"  [ ] {line.TrimEnd()}\n");
        }
    }
}
