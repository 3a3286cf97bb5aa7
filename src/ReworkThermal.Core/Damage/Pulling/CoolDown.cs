using UnitsNet;

namespace ReworkThermal.Core.Damage.Pulling;

/// <summary>How long to let a pad cool before it is touched again.</summary>
public abstract record CoolDown
{
    private CoolDown(Temperature target) => Target = target;

    /// <summary>Temperature below which the bond is back.</summary>
    public Temperature Target { get; }

    /// <summary>The pad is cool enough over the whole history.</summary>
    public sealed record CoolAlready : CoolDown
    {
        internal CoolAlready(Temperature target)
            : base(target)
        {
        }
    }

    /// <summary>The pad gets cool enough and stays so.</summary>
    public sealed record Wait : CoolDown
    {
        internal Wait(Temperature target, Duration time)
            : base(target) => Time = time;

        /// <summary>Time from the start of the history.</summary>
        public Duration Time { get; }
    }

    /// <summary>The history ends while the pad is still too hot.</summary>
    public sealed record NotWithin : CoolDown
    {
        internal NotWithin(Temperature target, Duration asked, Temperature end)
            : base(target)
        {
            Asked = asked;
            End = end;
        }

        /// <summary>Length of the history.</summary>
        public Duration Asked { get; }

        /// <summary>Temperature at its end.</summary>
        public Temperature End { get; }
    }
}
