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
}
