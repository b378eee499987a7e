using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>The tools, and the form to describe one.</summary>
/// <param name="Car">The car.</param>
/// <param name="Name">The tool in the form.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Class">A tape's class; empty when not marked.</param>
/// <param name="Division">Its smallest division as typed.</param>
/// <param name="Sigma">Its standard uncertainty as typed.</param>
/// <param name="Faults">What is wrong in the form.</param>
public sealed record ToolsView(OpenCar Car, string Name, string Kind, string Class, string Division, string Sigma, FieldFaults Faults)
{
    /// <summary>The tools a new car starts with: their divisions are the usual ones, their accuracy is not claimed.</summary>
    public static IReadOnlyList<Tool> Usual(LengthUnit units)
    {
        var division = units == LengthUnit.Inch ? Length.FromFraction(0, 1, 16, LengthUnit.Inch) : Length.FromMillimetres(1);
        return [new Tool("tape", ToolKind.Tape, Division: division), new Tool("level", ToolKind.Level, Division: division)];
    }

    /// <summary>The page for a request; <c>?tool=tape</c> puts that tool into the form.</summary>
    public static ToolsView Of(CarRequest request, FieldFaults? faults = null)
    {
        if (faults is not null)
        {
            string Sent(string field) => request.Field(field);
            return new ToolsView(request.Car, Sent("name"), Sent("kind"), Sent("class"), Sent("division"), Sent("sigma"), faults);
        }

        var tool = request.Car.File.Tools.FirstOrDefault(t => t.Id == request.Query("tool"));
        return new ToolsView(
            request.Car,
            tool?.Id ?? "",
            (tool?.Kind ?? ToolKind.Tape).ToString(),
            tool?.Class?.ToString() ?? "",
            tool?.Division?.AsTyped ?? "",
            tool?.Sigma?.AsTyped ?? "",
            new FieldFaults()
        );
    }
}
