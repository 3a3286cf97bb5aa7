using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>How one copper layer meets the barrel.</summary>
public abstract record PlaneConnection
{
    private PlaneConnection()
    {
    }

    /// <summary>The copper runs into the barrel all round.</summary>
    public sealed record Direct : PlaneConnection;

    /// <summary>Relief spokes join the land of this layer to its copper.</summary>
    public sealed record Relieved : PlaneConnection
    {
        /// <summary>Creates a relief.</summary>
        /// <param name="spokes">Number of spokes, 1 to 12.</param>
        /// <param name="width">Width of each spoke, above zero.</param>
        /// <param name="length">Length of each spoke: the gap between land and plane, above zero.</param>
        public Relieved(int spokes, Length width, Length length)
        {
            Spokes = spokes is >= 1 and <= 12 ? spokes : throw new ImpossibleGeometryException("spokes", "must be a whole number from 1 to 12");
            Width = Dimension.Positive(width, "width");
            Length = Dimension.Positive(length, "length");
        }

        /// <summary>Number of spokes.</summary>
        public int Spokes { get; }

        /// <summary>Width of each spoke.</summary>
        public Length Width { get; }

        /// <summary>Length of each spoke.</summary>
        public Length Length { get; }

        // All spokes side by side need no more than the edge they start from. Plain numbers, for a length in a file may be as large as they go.
        internal void RequireRoom(double edgeM, int layer)
        {
            if (Spokes * Width.Meters > edgeM)
            {
                throw new ImpossibleGeometryException(
                    "connection",
                    $"on layer {layer} {Spokes} spoke(s) of {Dimension.Millimetres(Width)} are wider than the edge of {Dimension.Millimetres(Length.FromMeters(edgeM))} they start from; give fewer or narrower spokes");
            }
        }
    }

    /// <summary>The copper keeps clear of the barrel.</summary>
    public sealed record Isolated : PlaneConnection
    {
        /// <summary>Creates a clearance.</summary>
        /// <param name="antipad">Diameter of the clearance, above zero.</param>
        public Isolated(Length antipad) => Antipad = Dimension.Positive(antipad, "antipad");

        /// <summary>Diameter of the clearance.</summary>
        public Length Antipad { get; }
    }
}
