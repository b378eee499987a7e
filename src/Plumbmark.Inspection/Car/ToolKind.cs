namespace Plumbmark.Inspection.Car;

/// <summary>The sorts of tool that a reading may come from.</summary>
public enum ToolKind
{
    /// <summary>A measuring tape.</summary>
    Tape,

    /// <summary>A rigid rule or straightedge with divisions.</summary>
    Rule,

    /// <summary>A beam with two points, set on one side and offered to the other.</summary>
    Trammel,

    /// <summary>A water level, spirit level or digital level used for heights.</summary>
    Level,

    /// <summary>A line laser used as height reference.</summary>
    Laser,

    /// <summary>A caliper or height gauge.</summary>
    Caliper,

    /// <summary>A plumb bob.</summary>
    Plumb,

    /// <summary>A micrometer, outside or inside.</summary>
    Micrometer,

    /// <summary>Feeler gauges, or paper of known thickness.</summary>
    Feeler,

    /// <summary>A dial gauge.</summary>
    Dial,

    /// <summary>Anything else; its accuracy must be told.</summary>
    Other,
}
