using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>What is assumed of a tool when its owner does not say: division, class, spread of one reading.</summary>
/// <remarks>
/// A tape without a class on it is taken as class III, the widest the directive knows; a length read with no tool named is taken as read with such
/// a tape. Common practice, no source.
/// </remarks>
internal static class ToolHabits
{
    /// <summary>The name under which readings without a tool share one tape's zero and scale.</summary>
    public static string UnnamedTape => Texts.Say("floor.tool-habits.tape-not-named");

    /// <summary>The smallest division read: told, else 1 mm or 1/16 in.</summary>
    public static double DivisionMetres(CarFile car, Tool? tool) =>
        tool?.Division?.Metres ?? (car.Units == LengthUnit.Inch ? Length.FromFraction(Rational.Of(1, 16), LengthUnit.Inch).Metres : 1e-3);

    /// <summary>Spread of one reading between two marks, or of one that stands on something.</summary>
    public static ReadingUncertainty Reading(CarFile car, Tool? tool, bool isBetweenMarks) =>
        isBetweenMarks
            ? ReadingUncertainty.BetweenMarks(DivisionMetres(car, tool))
            : ReadingUncertainty.FromRest(DivisionMetres(car, tool));

    /// <summary>Zero and scale that all readings of a tape share, as far as its maker promises; null for tools that have none.</summary>
    public static NetworkTool? Shared(string id, Tool? tool)
    {
        if (tool is not null && tool.Kind != ToolKind.Tape)
        {
            return null;
        }

        var accuracy = TapeAccuracy.OfClass(tool?.Class ?? TapeClass.III);
        return new NetworkTool(id) { ZeroSigmaMetres = accuracy.ZeroPriorMetres, ScaleSigma = accuracy.ScalePriorPerMetre };
    }
}
