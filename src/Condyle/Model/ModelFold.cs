namespace Condyle.Model;

/// <summary>Turns the log of a draft into a model, event by event. It reads nothing but the log.</summary>
internal sealed class ModelFold
{
    private const int EventsBetweenQuestions = 1024;

    // By the number of the event that made it.
    private readonly RigElement?[] elements;

    // What may have changed since everything was forgotten: forgetting the rest again would change nothing.
    private readonly HashSet<RigElement> sinceForgotten = [];
    private bool hasForgotten;

    private ModelFold(int events) => elements = new RigElement?[events];

    public RigModel Model { get; } = new();

    public static RigModel Run(EventLog log, CancellationToken cancellation)
    {
        var fold = new ModelFold(log.Count);
        for (var id = 0; id < log.Count; id++)
        {
            if (id % EventsBetweenQuestions == 0)
                cancellation.ThrowIfCancellationRequested();
            fold.Model.IsCertain &= log[id].Scope == 0;
            log[id].Apply(fold, id);
        }

        return fold.Model;
    }

    public void Add(RigElement element)
    {
        elements[element.Id] = element;
        Touch(element);
        switch (element)
        {
            case RigSkeleton skeleton: Model.Skeletons.Add(skeleton); break;
            case RigNode node: Model.Nodes.Add(node); break;
            case RigChain chain: Model.Chains.Add(chain); break;
            case RigCopy copy: Model.Copies.Add(copy); break;
            case RigDrive drive: Model.Drives.Add(drive); break;
            case RigBlend blend: Model.Blends.Add(blend); break;
            case RigTwoBone solver: Model.TwoBones.Add(solver); break;
            case RigManyBone solver: Model.ManyBones.Add(solver); break;
            case RigCurve curve: Model.Curves.Add(curve); break;
            case RigAim aim: Model.Aims.Add(aim); break;
            case RigTwist twist: Model.Twists.Add(twist); break;
            case RigFalloff falloff: Model.Falloffs.Add(falloff); break;
            case RigSwitch given: Model.Switches.Add(given); break;
            case RigDial dial: Model.Dials.Add(dial); break;
            case RigChoice choice: Model.Choices.Add(choice); break;
            case RigOption option: Model.Options.Add(option); break;
            case RigMeasure measure: Model.Measures.Add(measure); break;
            case RigResponse response: Model.Responses.Add(response); break;
            case RigSpace space: Model.Spaces.Add(space); break;
            case RigLabel label: Model.Labels.Add(label); break;
        }
    }

    public void ForgetAll()
    {
        foreach (var element in hasForgotten ? sinceForgotten : elements.OfType<RigElement>())
            element.Forget();
        hasForgotten = true;
        sinceForgotten.Clear();
    }

    public T? Find<T>(int id)
        where T : RigElement
    {
        if (id < 0 || id >= elements.Length || elements[id] is not { } element)
            return null;
        Touch(element);
        return element as T;
    }

    /// <summary>What hangs under a parent when an element is put there: the element itself, or a copy's first joint.</summary>
    public IHung? Hung(RigElement element) => element is RigCopy copy ? copy.Joints.FirstOrDefault() : element as IHung;

    /// <summary>Whether an event certainly happens, once, to each such element: both were said in the same stretch of code.</summary>
    public bool IsCertain(RigEvent said, RigElement about) => said.Scope == about.Scope && !about.IsUnknown;

    private void Touch(RigElement element)
    {
        if (hasForgotten)
            sinceForgotten.Add(element);
    }
}
