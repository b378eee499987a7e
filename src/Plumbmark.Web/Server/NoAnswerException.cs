namespace Plumbmark.Web.Server;

/// <summary>What a car's readings say could not be worked out, through a fault of the program; nothing entered is lost by it. Told in words by the pages.</summary>
public sealed class NoAnswerException(Exception cause) : Exception("The answer for this car could not be worked out.", cause);
