namespace Condyle.Analyzers.Reading;

/// <summary>How far a reading goes. All limits are counted, never timed, so a reading is the same on every machine.</summary>
internal static class Limits
{
    /// <summary>Instructions executed in one path of a reading.</summary>
    public const int Steps = 4_000_000;

    /// <summary>Instructions executed in all the paths of a reading together.</summary>
    public const int StepsOfAllPaths = 4 * Steps;

    /// <summary>Characters and items that one path of a reading makes, those included that it drops again.</summary>
    public const int Room = 16_000_000;

    /// <summary>Syntax inside each other in one member.</summary>
    public const int SyntaxDepth = 1_000;

    /// <summary>Statements and expressions inside each other in one member.</summary>
    public const int CodeDepth = 500;

    /// <summary>Instructions that one function becomes.</summary>
    public const int CodeSize = 400_000;

    /// <summary>Calls of the user's own code inside each other.</summary>
    public const int Depth = 1_000;

    /// <summary>Calls of one function inside each other that are read one by one where none of them is sure to happen.</summary>
    public const int UnknownCalls = 4;

    /// <summary>Runs of the machine inside each other: lambdas called by a framework method, arms of an unknown condition.</summary>
    public const int Nesting = 60;

    /// <summary>Functions inside each other that are handed to code that isn't known.</summary>
    public const int HandedOn = 3;

    /// <summary>Helpers and tables through which what a call is given is followed back to the code that says it.</summary>
    public const int HandedThrough = 8;

    /// <summary>Parts of a value inside each other, when it is compared.</summary>
    public const int ValueDepth = 200;

    /// <summary>Ways through a definition that unknown booleans, enums and sides make.</summary>
    public const int Paths = 16;

    /// <summary>How many of them there may be when a further one is opened because an unknown text may be the one that it is compared with.</summary>
    public const int PathsOfTexts = 6;

    /// <summary>How many of them there may be when a further one is opened because something may be thrown that is caught.</summary>
    public const int PathsThatThrow = 8;

    /// <summary>Unknown conditions inside each other that are read both ways.</summary>
    public const int Speculation = 24;

    /// <summary>Unknown conditions that are read both ways in one path of a reading: each inside another doubles the work.</summary>
    public const int Speculations = 20_000;

    /// <summary>Items in one array or collection.</summary>
    public const int Items = 100_000;

    /// <summary>Characters in one text.</summary>
    public const int TextLength = 20_000;

    /// <summary>Sentences that one rig may say.</summary>
    public const int Events = 400_000;

    /// <summary>Files of a project whose lowered code is kept for their next versions.</summary>
    public const int RecentFiles = 8;

    /// <summary>Definitions, besides those in the file itself, that are read live when a shared helper is edited. The build reads all.</summary>
    public const int LiveDefinitionsForAHelper = 3;
}
