namespace Condyle.Model;

/// <summary>What a rig is made of: the same whether a program recorded it or a reading worked it out.</summary>
internal sealed class RigModel
{
    public List<RigSkeleton> Skeletons { get; } = [];

    /// <summary>All nodes in the order in which they were made.</summary>
    public List<RigNode> Nodes { get; } = [];

    public List<RigChain> Chains { get; } = [];

    public List<RigCopy> Copies { get; } = [];

    public List<RigDrive> Drives { get; } = [];

    public List<RigBlend> Blends { get; } = [];

    public List<RigTwoBone> TwoBones { get; } = [];

    public List<RigManyBone> ManyBones { get; } = [];

    public List<RigCurve> Curves { get; } = [];

    public List<RigAim> Aims { get; } = [];

    public List<RigTwist> Twists { get; } = [];

    public List<RigFalloff> Falloffs { get; } = [];

    public List<RigSwitch> Switches { get; } = [];

    public List<RigDial> Dials { get; } = [];

    public List<RigChoice> Choices { get; } = [];

    /// <summary>The options of all choices.</summary>
    public List<RigOption> Options { get; } = [];

    public List<RigMeasure> Measures { get; } = [];

    public List<RigResponse> Responses { get; } = [];

    public List<RigSpace> Spaces { get; } = [];

    public List<RigLabel> Labels { get; } = [];

    public List<RigAcceptance> Acceptances { get; } = [];

    public List<RigGap> Gaps { get; } = [];

    /// <summary>The sentences that write channels or placements, in the order in which they were begun.</summary>
    public IEnumerable<RigElement> WritingSentences => Drives.Cast<RigElement>()
        .Concat(Blends).Concat(TwoBones).Concat(ManyBones).Concat(Curves).Concat(Aims).Concat(Twists).Concat(Spaces).OrderBy(sentence => sentence.Id);

    /// <summary>Whether it is only a part of a rig, such as what a helper adds that nobody was seen to call: others may say more of what is in it.</summary>
    public bool IsPart { get; set; }

    /// <summary>Whether all of it is said once and for certain, and not by code that may or may not run, or run many times.</summary>
    public bool IsCertain { get; set; } = true;

    /// <summary>Whether something is said of an element that is only known by its type, which may be any of those that the model shows.</summary>
    public bool SpeaksOfUnknown { get; set; }

    /// <summary>Whether there can be nothing in the rig that the model doesn't show.</summary>
    public bool IsWhole => Gaps.Count == 0 && !IsPart && !SpeaksOfUnknown;

    /// <summary>The switch that a weight's variable stands for; none where it stands for an option.</summary>
    public RigSwitch? SwitchOf(int variable) => ById(Switches, variable);

    /// <summary>The option that a weight's variable stands for; none where it stands for a switch.</summary>
    public RigOption? OptionOf(int variable) => ById(Options, variable);

    // They lie in the order of their numbers, in which they were made.
    private static T? ById<T>(List<T> elements, int id)
        where T : RigElement
    {
        var (from, to) = (0, elements.Count);
        while (from < to)
        {
            var middle = (from + to) / 2;
            if (elements[middle].Id < id)
                from = middle + 1;
            else
                to = middle;
        }

        return from < elements.Count && elements[from].Id == id ? elements[from] : null;
    }

    /// <summary>Folds a log into the rig that it says.</summary>
    public static RigModel Of(EventLog log, CancellationToken cancellation = default) => ModelFold.Run(log, cancellation);
}
