namespace Condyle.Benchmarks.Reader;

/// <summary>What the reader owes to those whose build and whose typing it stands in. Each is a largest ratio.</summary>
internal static class ReaderGoals
{
    /// <summary>Reading, on top of binding the same code. A bare-bones evaluator that knows nothing open needs 0.1 to 0.28 of it.</summary>
    public const double Reading = 0.35;

    /// <summary>Reading, rules and reporting, on top of binding the same code.</summary>
    public const double ReadingAndRules = 0.5;

    /// <summary>Our analyzers beside those that the SDK runs in every build: nobody minds a quarter more of what everybody has.</summary>
    public const double SdkAnalyzers = 0.25;

    /// <summary>What a keystroke costs with us, against the new compilation and the binding of the edited file that it costs anyway.</summary>
    public const double Keystroke = 1.5;

    /// <summary>
    /// How that may grow from the small to the large project, beyond what the compiler's own part grows: typing in a large one must not feel different
    /// because of us.
    /// </summary>
    public const double KeystrokeGrowth = 1.2;

    /// <summary>What ten times the nodes may cost: ten times, and a tenth for caches that get too small.</summary>
    public const double TenTimesTheNodes = 11;

    /// <summary>All rules, beside the reading that they need anyway.</summary>
    public const double AllRules = 0.25;

    /// <summary>What may be left of the memory that a reading held once its compilation is let go: nothing but noise.</summary>
    public const double LeftBehind = 0.02;

    /// <summary>What a long time of typing may add to the memory of the first keystrokes: nothing but noise.</summary>
    public const double HeldByTyping = 1.05;
}
