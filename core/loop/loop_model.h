// SPDX-License-Identifier: GPL-3.0-or-later
// All loops of a show, compiled: only what takes part in a loop, ready to be evaluated at any frequency.
#pragma once
#include <Eigen/Core>
#include <functional>
#include <vector>

#include "core/loop/chain.h"
#include "core/propagation/transfer.h"
#include "core/show/show.h"

namespace howlmap {

using ComplexMatrix = Eigen::MatrixXcd;
using ComplexVector = Eigen::VectorXcd;
using RealMatrix = Eigen::MatrixXd;

/// What a draw changes beside the show itself.
struct LoopExtras {
    /// Height of the floor for (input, loudspeaker) by index in the show; without it, that of the riser both stand on.
    std::function<double(int input, int loudspeaker)> floor_z;
    std::vector<double> phases;  ///< rad by loudspeaker of the show; empty: 0
    /// Added to H of (input, loudspeaker) by index in the show at a frequency in Hz; may be empty.
    std::function<Complex(int input, int loudspeaker, double hz)> room;
    double most_hz = 1e9;  ///< steps of a grid that follow the room term, at most
};

/// Factors of the loop matrix at one frequency. Rows of H are inputs, columns loudspeakers.
struct LoopFactors {
    double hz = 0.0;
    ComplexMatrix h;     ///< H with the room term and the drawn phases, if any
    ComplexVector b, p;  ///< by input
    ComplexVector r;     ///< Rl by loudspeaker
    ComplexVector e;     ///< E_m exp(-jw tau) by mix
};

/// Refers to the show, which must outlive it.
class LoopModel {
  public:
    struct In {
        int index;  ///< in the show
        Receiver receiver;
        InputResponse response;
        Filter chain;
    };
    struct Speaker {
        int index;
        Emitter emitter;
        Filter response;
        double phase = 0.0;
    };
    struct Bus {
        int index;
        Filter chain;
        std::vector<int> speakers;  ///< positions in speakers()
    };

    explicit LoopModel(const Show& show, const LoopExtras& extras = {});

    const Show& show() const { return *show_; }
    const std::vector<In>& inputs() const { return inputs_; }  ///< microphones and pickups that are sent somewhere
    const std::vector<Speaker>& speakers() const { return speakers_; }  ///< loudspeakers of the buses
    const std::vector<Bus>& buses() const { return buses_; }            ///< mixes with a loudspeaker and such a send
    const RealMatrix& sends() const { return sends_; }                  ///< S by (bus, input), 0 without a send
    const std::vector<Leg>& legs(int input, int speaker) const;
    const Surroundings& surroundings() const { return surroundings_; }
    double latency_s() const { return latency_s_; }
    double most_hz() const { return extras_.most_hz; }
    bool empty() const { return inputs_.empty(); }

    /// H[input, speaker] alone. hz above 0.
    Complex transfer(int input, int speaker, double hz) const;
    LoopFactors factors(double hz) const;
    /// L over inputs: L[c', c].
    ComplexMatrix loop_matrix(const LoopFactors& factors) const;
    /// The smaller of L and the same loops seen from the buses: their non-zero eigenvalues are the same.
    ComplexMatrix small_matrix(const LoopFactors& factors) const;

  private:
    void add_buses();
    void add_legs();
    ComplexMatrix heard_from_buses(const LoopFactors& factors) const;  // A[c', m]
    Complex room_term(int input, int speaker, double hz) const;

    const Show* show_;
    LoopExtras extras_;
    Surroundings surroundings_;
    double latency_s_;
    std::vector<In> inputs_;
    std::vector<Speaker> speakers_;
    std::vector<Bus> buses_;
    RealMatrix sends_;
    std::vector<std::vector<Leg>> legs_;
};

}  // namespace howlmap
