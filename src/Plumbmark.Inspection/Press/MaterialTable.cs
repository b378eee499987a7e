using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>The metals that the press knows.</summary>
/// <remarks>A standard prints a least yield; what a bar really has lies above it. The upper ends are our own choice where the source says so.</remarks>
public static class MaterialTable
{
    /// <summary>Young's modulus of every steel here, Pa: 200 to 210 GPa in handbooks (from memory); the spread is part of the planner's doubt.</summary>
    public const double ElasticModulusPascals = 205e9;

    private const string Above = "upper end own choice, 1.45 times the least";
    private const double Megapascal = 1e6;

    /// <summary>Every metal, in the order offered.</summary>
    public static IReadOnlyList<MaterialEntry> All { get; } =
    [
        Steel(Material.MildSheet, "pressed mild steel sheet", 140, 280, "EN 10130 DC01: at most 280 MPa; lower end 140 MPa from memory"),
        Steel(
            Material.MildBar,
            "mild steel bar (070M20, En 3)",
            215,
            350,
            "070M20: about 215 MPa at least, from memory; upper end own choice"
        ),
        Steel(Material.S235, "structural steel S235", 235, 340, $"EN 10025-2 table 7, up to 16 mm: at least 235 MPa; {Above}"),
        Steel(Material.S275, "structural steel S275", 275, 400, $"EN 10025-2 table 7, up to 16 mm: at least 275 MPa; {Above}"),
        Steel(Material.S355, "structural steel S355", 355, 515, $"EN 10025-2 table 7, up to 16 mm: at least 355 MPa; {Above}"),
        Steel(
            Material.MediumCarbon,
            "medium-carbon steel (080M40, En 8), normalised",
            280,
            420,
            "BS 970 080M40 normalised, up to 150 mm: at least 280 MPa; upper end own choice, 1.5 times the least"
        ),
        new(Material.AlloySteel, "alloy steel, hardened", null, "not planned here"),
        new(Material.CastIron, "cast iron", null, "not planned here"),
        new(Material.LightAlloy, "aluminium or other light alloy", null, "not planned here"),
        new(Material.Unknown, "not known", null, "not known"),
    ];

    /// <summary>The entry of a metal.</summary>
    public static MaterialEntry Of(Material material) => All.First(e => e.Material == material);

    private static MaterialEntry Steel(Material material, string name, double low, double high, string source) =>
        new(material, name, new YieldRange(low * Megapascal, high * Megapascal), source);
}
