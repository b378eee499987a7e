using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Layout;

/// <summary>Words that several pages use.</summary>
public static class Words
{
    /// <summary>true, out, can't tell yet; "no limit known" where there is no verdict.</summary>
    public static string For(Verdict? verdict) =>
        verdict switch
        {
            Verdict.True => Texts.Say("verdict.true"),
            Verdict.Out => Texts.Say("verdict.out"),
            Verdict.CannotTellYet => Texts.Say("verdict.cannot-tell"),
            _ => Texts.Say("verdict.no-limit"),
        };

    /// <summary>What a car is called; a car file need not name it.</summary>
    public static string NameOf(OpenCar car) =>
        string.IsNullOrWhiteSpace(car.File.Car.Name) ? Texts.Say("page.car-n", car.Id) : car.File.Car.Name;

    /// <summary>A sentence about a number of things, such as "1 reading" or "20 readings": the key has one sentence for one and another for many.</summary>
    public static string Count(int number, string key) => number == 1 ? Texts.Say($"{key}.one", number) : Texts.Say($"{key}.many", number);

    /// <summary>Words side by side: "B.L, C.L, D.L".</summary>
    public static string List(IEnumerable<string> words) => string.Join(Texts.Say("list.between"), words);
}
