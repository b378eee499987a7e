using System.Text.Json;
using System.Text.Json.Nodes;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>What stands in a form of the Road: as it was sent, or as the car has it.</summary>
internal static class KeptValues
{
    /// <summary>As sent.</summary>
    public static Func<string, string> Sent(PageRequest request) => request.Field;

    /// <summary>Empty, apart from what the address proposes.</summary>
    public static Func<string, string> Asked(PageRequest request) => request.Query;

    /// <summary>As the car's section has it.</summary>
    /// <param name="car">The car.</param>
    /// <param name="group">The group of the section, such as <c>front</c>.</param>
    public static Func<string, string> Of(OpenCar car, string group)
    {
        var section = car.File.Road ?? RoadSection.Empty;
        var bytes = ActJson.Write(new Act.RoadDescribed(section with { Parts = [], Wheels = [] }), car.File.Units);
        var node = JsonNode.Parse(bytes)?["road"]?[group] as JsonObject;
        return name => Text(name.Split('.').Aggregate((JsonNode?)node, (n, step) => (n as JsonObject)?[step]));
    }

    private static string Text(JsonNode? node) =>
        node switch
        {
            JsonArray list => string.Join(", ", list.Select(Text)),
            JsonValue value when value.GetValueKind() == JsonValueKind.True => "yes",
            JsonValue value when value.GetValueKind() == JsonValueKind.False => "",
            JsonValue value => value.ToString(),
            _ => "",
        };
}
