using Plumbmark.Engine.Bending;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>The metals that the press knows.</summary>
/// <remarks>A standard prints a least yield; what a bar really has lies above it. The upper ends are our own choice where the source says so.</remarks>
public static class MaterialTable
{
    /// <summary>Young's modulus of every steel here, Pa: 200 to 210 GPa in handbooks (from memory); the spread is part of the planner's doubt.</summary>
    public const double ElasticModulusPascals = 205e9;

    private static string Above => Texts.Say("press.material-table.upper-end-own-choice-1");
    private const double Megapascal = 1e6;

    /// <summary>Every metal, in the order offered.</summary>
    public static IReadOnlyList<MaterialEntry> All { get; } =
    [
        Steel(
            Material.MildSheet,
            Texts.Say("press.material-table.pressed-mild-steel-sheet"),
            140,
            280,
            Texts.Say("press.material-table.en-10130-dc01-at-most")
        ),
        Steel(
            Material.MildBar,
            Texts.Say("press.material-table.mild-steel-bar-070m20-en"),
            215,
            350,
            Texts.Say("press.material-table.070m20-about-215-mpa-at")
        ),
        Steel(
            Material.S235,
            Texts.Say("press.material-table.structural-steel-s235"),
            235,
            340,
            Texts.Say("press.material-table.en-10025-2-table-7", Above)
        ),
        Steel(
            Material.S275,
            Texts.Say("press.material-table.structural-steel-s275"),
            275,
            400,
            Texts.Say("press.material-table.en-10025-2-table-7-up-to-16-mm", Above)
        ),
        Steel(
            Material.S355,
            Texts.Say("press.material-table.structural-steel-s355"),
            355,
            515,
            Texts.Say("press.material-table.en-10025-2-table-7-2", Above)
        ),
        Steel(
            Material.MediumCarbon,
            Texts.Say("press.material-table.medium-carbon-steel-080m40-en"),
            280,
            420,
            Texts.Say("press.material-table.bs-970-080m40-normalised-up")
        ),
        new(
            Material.AlloySteel,
            Texts.Say("press.material-table.alloy-steel-hardened"),
            null,
            Texts.Say("press.material-table.not-planned-here")
        ),
        new(Material.CastIron, Texts.Say("press.material-table.cast-iron"), null, Texts.Say("press.material-table.not-planned-here")),
        new(
            Material.LightAlloy,
            Texts.Say("press.material-table.aluminium-or-other-light-alloy"),
            null,
            Texts.Say("press.material-table.not-planned-here")
        ),
        new(Material.Unknown, Texts.Say("press.material-table.not-known"), null, Texts.Say("press.material-table.not-known")),
    ];

    /// <summary>The entry of a metal.</summary>
    public static MaterialEntry Of(Material material) => All.First(e => e.Material == material);

    private static MaterialEntry Steel(Material material, string name, double low, double high, string source) =>
        new(material, name, new YieldRange(low * Megapascal, high * Megapascal), source);
}
