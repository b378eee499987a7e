namespace Plumbmark.Journeys;

/// <summary>A form that waits on the phone, as the cuts fill it in.</summary>
/// <param name="Page">Where it stands.</param>
/// <param name="Action">Where it is sent.</param>
/// <param name="Fields">What is typed, each as <c>name=value</c>.</param>
/// <param name="Note">The field for the label; null for a photo, which is told by its width.</param>
internal sealed record CutForm(string Page, string Action, string[] Fields, string? Note)
{
    /// <summary>A reading of the tape: most of what is entered.</summary>
    public static CutForm Reading { get; } = new("/cars/1/floor", "/cars/1/readings", ["from=A.L", "to=B.R", "value=31 1/2"], "note");

    private static readonly CutForm[] s_others =
    [
        new(
            "/cars/1/bench/parts/arm.L?measure=length",
            "/cars/1/bench/parts/arm.L/measures",
            ["dimension=lug to lug", "value1=11.01"],
            "note"
        ),
        new("/cars/1/press/p1", "/cars/1/press/p1/crack-tests", ["method=dye", "found=no"], "test-note"),
        new("/cars/1/road/wheels?kind=strings", "/cars/1/road/wheels", ["ahead=60", "behind=60 1/8", "between=100"], "note"),
        new("/cars/1/points/A.L/story", "/cars/1/photos", [], null),
    ];

    /// <summary>Three times in five a reading, otherwise one of the others.</summary>
    public static CutForm Any(Random random) => random.Next(5) < 3 ? Reading : s_others[random.Next(s_others.Length)];
}
