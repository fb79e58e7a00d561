namespace Condyle.Rules;

/// <summary>One rule, on the model alone. It speaks only of what is known: an open fact keeps it silent.</summary>
internal abstract class Rule
{
    /// <summary>The rule's id: <c>CDY</c> and four digits, the first of which is its family.</summary>
    public abstract string Id { get; }

    public abstract string Title { get; }

    public abstract Severity Severity { get; }

    /// <summary>What its fix does, in a few words; empty where the right code can't be known.</summary>
    public virtual string Fix => "";

    /// <summary>Where the knowledge comes from that makes it a slip.</summary>
    public virtual string Source => "common practice, no source";

    /// <summary>Whether it speaks of a call as it stands in the code, so that it holds only if it does every time that the call is made.</summary>
    public virtual bool IsAboutCode => false;

    /// <summary>Whether it tells of a step that is still to be done, which a repair may bring up.</summary>
    public virtual bool IsAboutNextStep => false;

    /// <summary>Whether what a pose shows of a sentence that it finds fault with is explained by that.</summary>
    public virtual bool ExplainsPoses => Severity == Severity.Error;

    /// <summary>The rule's page: what is flagged, why it hurts, wrong and right code, how to fix or accept it.</summary>
    public string Page => RulePage.Of(Id);

    public abstract IEnumerable<Finding> Check(CheckedRig rig);
}
