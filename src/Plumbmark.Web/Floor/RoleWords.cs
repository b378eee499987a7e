using Plumbmark.Inspection.Car;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>What a point carries, in words.</summary>
internal static class RoleWords
{
    /// <summary>The roles with their words.</summary>
    public static IReadOnlyList<(string Value, string Text)> All { get; } =
    [
        (nameof(PointRole.Suspension), Say("role.suspension")),
        (nameof(PointRole.Spring), Say("role.spring")),
        (nameof(PointRole.Steering), Say("role.steering")),
        (nameof(PointRole.Engine), Say("role.engine")),
        (nameof(PointRole.Body), Say("role.body")),
        (nameof(PointRole.Other), Say("role.other")),
    ];

    /// <summary>The word for a role.</summary>
    public static string For(PointRole role) => All.First(r => r.Value == role.ToString()).Text;

    /// <summary>The role of that name; null when there is none.</summary>
    public static PointRole? Of(string name) => All.Any(r => r.Value == name) && Enum.TryParse<PointRole>(name, out var role) ? role : null;
}
