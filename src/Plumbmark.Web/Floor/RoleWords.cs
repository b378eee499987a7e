using Plumbmark.Inspection.Car;

namespace Plumbmark.Web.Floor;

/// <summary>What a point carries, in words.</summary>
internal static class RoleWords
{
    /// <summary>The roles with their words.</summary>
    public static IReadOnlyList<(string Value, string Text)> All { get; } =
    [
        (nameof(PointRole.Suspension), "suspension"),
        (nameof(PointRole.Spring), "spring or axle"),
        (nameof(PointRole.Steering), "steering"),
        (nameof(PointRole.Engine), "engine, gearbox or final drive"),
        (nameof(PointRole.Body), "body"),
        (nameof(PointRole.Other), "anything else"),
    ];

    /// <summary>The word for a role.</summary>
    public static string For(PointRole role) => All.First(r => r.Value == role.ToString()).Text;

    /// <summary>The role of that name; null when there is none.</summary>
    public static PointRole? Of(string name) => All.Any(r => r.Value == name) && Enum.TryParse<PointRole>(name, out var role) ? role : null;
}
