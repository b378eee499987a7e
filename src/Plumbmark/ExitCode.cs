namespace Plumbmark;

/// <summary>How the program ends: the one table of exit codes.</summary>
internal static class ExitCode
{
    /// <summary>The frame is true; or, for a verb without a verdict, it did what it was asked.</summary>
    public const int True = 0;

    /// <summary>The input was refused; every fault has been listed with its place.</summary>
    public const int Refused = 2;

    /// <summary>The frame is out.</summary>
    public const int Out = 10;

    /// <summary>The readings cannot tell yet.</summary>
    public const int CannotTellYet = 20;

    /// <summary>The command line was not understood.</summary>
    public const int Usage = 64;

    /// <summary>A fault of the program itself.</summary>
    public const int Internal = 70;
}
