using System.Text;

namespace Plumbmark.Testing;

/// <summary>Invented press jobs as car-file text; <c>with</c> replaces a piece of it, to change one thing at a time.</summary>
public static class PressJobSamples
{
    /// <summary>A pressed lower arm whose eye stands 0.19 in high: of flat strap, 8 in between the blocks, crack test clear; no bite yet.</summary>
    public const string LowerArm = """
        {
          "format": "plumbmark-car", "version": 1, "units": "in",
          "press": [
            {
              "id": "arm",
              "part": {
                "name": "left lower arm, front half", "kind": "wishbone", "make": "pressed", "material": "mild-sheet", "length": "11",
                "history": { "cracked": "no", "kinked": "no", "torn": "no", "corroded": "no", "welded": "no", "heated": "no", "pressedBefore": "no" }
              },
              "section": { "shape": "rectangle", "depth": "1/8", "width": "1 1/4" },
              "outBy": [0.18, 0.19, 0.19],
              "setUp": { "leftArm": 4, "rightArm": 4, "travelAt": "part" },
              "limits": { "straight": "1/32", "source": "practice", "strain": 0.05, "bites": 8, "reading": 0.005, "travel": 0.005 },
              "bites": [],
              "crackTests": [ { "id": "t1", "method": "dye", "found": "no" } ]
            }
          ]
        }
        """;

    /// <summary>The bites of the arm: travel and set, in.</summary>
    public static IReadOnlyList<(string Travel, string Set)> LowerArmBites { get; } =
    [("0.13", "0.00"), ("0.16", "0.02"), ("0.22", "0.08"), ("0.21", "0.07")];

    /// <summary>The text with one piece replaced.</summary>
    /// <exception cref="ArgumentException">The piece is not there, so that nothing would be changed.</exception>
    public static string With(this string text, string piece, string instead) =>
        text.Contains(piece, StringComparison.Ordinal)
            ? text.Replace(piece, instead, StringComparison.Ordinal)
            : throw new ArgumentException($"There is no {piece} in the text.", nameof(piece));

    /// <summary>The arm's text after some of its bites.</summary>
    public static string LowerArmAfter(int bites) =>
        LowerArm.With(
            "\"bites\": []",
            $"\"bites\": [{string.Join(", ", LowerArmBites.Take(bites).Select((b, i) => $"{{ \"id\": \"b{i + 1}\", \"travel\": {b.Travel}, \"set\": {b.Set} }}"))}]"
        );

    /// <summary>The bytes of a text.</summary>
    public static byte[] Utf8(this string text) => Encoding.UTF8.GetBytes(text);
}
