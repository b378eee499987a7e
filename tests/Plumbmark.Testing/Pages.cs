namespace Plumbmark.Testing;

/// <summary>Every page of the program; a test of the journeys holds the list against the routes.</summary>
public static class Pages
{
    /// <summary>Each page's route with where to look at it in the app as it starts: car 1 is the demo, car 2 is empty. The page that a stranger gets is in PhoneJourneys.</summary>
    public static IReadOnlyList<(string Route, string[] Addresses)> All { get; } =
    [
        ("/", ["/"]),
        ("/first", ["/first"]),
        ("/first/{step:int}", ["/first/1", "/first/2", "/first/3", "/first/4", "/first/5"]),
        ("/look", ["/look"]),
        ("/phones", ["/phones"]),
        ("/cars/{car:long}", ["/cars/1"]),
        ("/cars/{car:long}/journal", ["/cars/1/journal"]),
        (
            "/cars/{car:long}/floor",
            [
                "/cars/1/floor",
                "/cars/1/floor?kind=offset&point=C.L&from=B.L&to=E.L",
                "/cars/1/floor?kind=drop&point=A.R",
                "/cars/1/floor?kind=height&round=1",
                "/cars/2/floor",
                "/cars/99/floor",
            ]
        ),
        ("/cars/{car:long}/readings/{reading}/withdrawal", ["/cars/1/readings/r1/withdrawal"]),
        ("/cars/{car:long}/points", ["/cars/1/points", "/cars/2/points"]),
        ("/cars/{car:long}/points/{point}", ["/cars/1/points/A.L"]),
        ("/cars/{car:long}/points/{point}/drop", ["/cars/1/points/B.L/drop"]),
        ("/cars/{car:long}/points/{point}/story", ["/cars/1/points/A.R/story"]),
        ("/cars/{car:long}/sessions", ["/cars/1/sessions"]),
        ("/cars/{car:long}/turning", ["/cars/1/turning"]),
        ("/cars/{car:long}/level", ["/cars/1/level"]),
        ("/cars/{car:long}/plan", ["/cars/1/plan", "/cars/2/plan"]),
        ("/cars/{car:long}/tools", ["/cars/1/tools?tool=tape"]),
        ("/cars/{car:long}/limits", ["/cars/1/limits"]),
        ("/cars/{car:long}/book", ["/cars/1/book"]),
        ("/cars/{car:long}/book/page", ["/cars/1/book/page?id=frame"]),
        ("/cars/{car:long}/book/figure", ["/cars/1/book/figure?page=frame&figure=e-f"]),
        ("/cars/{car:long}/bench", ["/cars/1/bench"]),
        (
            "/cars/{car:long}/bench/parts/{part}",
            [
                "/cars/1/bench/parts/arm.L",
                "/cars/1/bench/parts/spring.L?measure=spring",
                "/cars/1/bench/parts/arm.R?measure=heights",
                "/cars/1/bench/parts/arm.R?measure=straightedge",
            ]
        ),
        ("/cars/{car:long}/bench/parts/{part}/card", ["/cars/1/bench/parts/arm.L/card"]),
        ("/cars/{car:long}/bench/parts/{part}/measures/{measure}/withdrawal", ["/cars/1/bench/parts/arm.L/measures/m1/withdrawal"]),
        ("/cars/{car:long}/bench/types", ["/cars/1/bench/types"]),
        ("/cars/{car:long}/press", ["/cars/1/press"]),
        ("/cars/{car:long}/press/{job}", ["/cars/1/press/p1"]),
        ("/cars/{car:long}/press/{job}/description", ["/cars/1/press/p1/description"]),
        ("/cars/{car:long}/press/{job}/bites/{bite}/withdrawal", ["/cars/1/press/p1/bites/b2/withdrawal"]),
        ("/cars/{car:long}/road", ["/cars/1/road"]),
        ("/cars/{car:long}/road/trials", ["/cars/1/road/trials"]),
        ("/cars/{car:long}/road/front", ["/cars/1/road/front"]),
        ("/cars/{car:long}/road/rear", ["/cars/1/road/rear", "/cars/1/road/rear?kind=trailingArms"]),
        ("/cars/{car:long}/road/figures", ["/cars/1/road/figures"]),
        ("/cars/{car:long}/road/adjusters", ["/cars/1/road/adjusters"]),
        ("/cars/{car:long}/road/findings", ["/cars/1/road/findings?part=Stub"]),
        ("/cars/{car:long}/road/findings/{finding}/withdrawal", ["/cars/1/road/findings/p1/withdrawal"]),
        ("/cars/{car:long}/road/wheels", ["/cars/1/road/wheels?kind=stringGaps", "/cars/1/road/wheels?kind=swing"]),
        ("/cars/{car:long}/road/wheels/{reading}/withdrawal", ["/cars/1/road/wheels/w1/withdrawal"]),
        ("/cars/{car:long}/sheet", ["/cars/1/sheet"]),
        ("/cars/{car:long}/sheet/form-in", ["/cars/1/sheet/form-in?ask=all"]),
        ("/cars/{car:long}/sheet/readings-in", ["/cars/1/sheet/readings-in"]),
    ];
}
