// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/loop_drives.h"

#include <Eigen/LU>
#include <algorithm>

namespace howlmap::maps {
namespace {
/// Drives of the buses by input: E_m exp(-jw tau) S P_c. Shape: buses x inputs.
ComplexMatrix bus_drives(const LoopModel& model, const LoopFactors& factors) {
    return factors.e.asDiagonal() * model.sends().cast<Complex>() * factors.p.asDiagonal();
}

/// Drives of the loudspeakers by bus: Rl where the bus feeds it. Shape: loudspeakers x buses.
ComplexMatrix speaker_drives(const LoopModel& model, const LoopFactors& factors) {
    ComplexMatrix drives = ComplexMatrix::Zero(factors.r.size(), static_cast<Eigen::Index>(model.buses().size()));
    for (std::size_t bus = 0; bus < model.buses().size(); ++bus)
        for (const int speaker : model.buses()[bus].speakers)
            drives(speaker, static_cast<Eigen::Index>(bus)) = factors.r(speaker);
    return drives;
}

/// A matrix without one of its columns.
ComplexMatrix without_column(const ComplexMatrix& matrix, Eigen::Index column) {
    ComplexMatrix rest(matrix.rows(), matrix.cols() - 1);
    rest << matrix.leftCols(column), matrix.rightCols(matrix.cols() - column - 1);
    return rest;
}
ComplexMatrix without_row(const ComplexMatrix& matrix, Eigen::Index row) {
    ComplexMatrix rest(matrix.rows() - 1, matrix.cols());
    rest << matrix.topRows(row), matrix.bottomRows(matrix.rows() - row - 1);
    return rest;
}

ComplexMatrix one_minus(const ComplexMatrix& loops) {
    return ComplexMatrix::Identity(loops.rows(), loops.cols()) - loops;
}

/// What a loudspeaker map needs at one frequency.
struct LoudspeakerLoops {
    ComplexVector mix, others;      // s M and q M, by input
    Complex mix_rest, others_rest;  // s M u and q M u
};

LoudspeakerLoops loudspeaker_loops(const LoopModel& model, const LoopFactors& factors, Eigen::Index speaker,
                                   Eigen::Index bus) {
    const ComplexMatrix sends = bus_drives(model, factors);
    const ComplexMatrix heard = factors.b.asDiagonal() * factors.h;  // inputs x loudspeakers
    ComplexMatrix elsewhere = speaker_drives(model, factors);        // loudspeakers x buses, without the moved one
    ComplexVector through = elsewhere.row(speaker).transpose();      // by bus
    through(bus) = 0.0;
    elsewhere.row(speaker).setZero();
    const ComplexVector rest = heard * elsewhere.col(bus);
    ComplexMatrix rows(2, sends.cols());
    rows << sends.row(bus), through.transpose() * sends;
    if (sends.rows() > 1) {
        const ComplexMatrix loops = heard * without_column(elsewhere, bus) * without_row(sends, bus);
        rows = one_minus(loops).transpose().partialPivLu().solve(rows.transpose()).transpose().eval();
    }
    const ComplexVector of_rest = rows * rest;
    return {rows.row(0).transpose(), rows.row(1).transpose(), of_rest(0), of_rest(1)};
}

bool carries_more(const LoopModel& model, int speaker, int bus) {
    for (std::size_t m = 0; m < model.buses().size(); ++m) {
        const auto& speakers = model.buses()[m].speakers;
        if (static_cast<int>(m) != bus && std::find(speakers.begin(), speakers.end(), speaker) != speakers.end())
            return true;
    }
    return false;
}

void loudspeaker_at(const LoopModel& model, const LoopFactors& factors, Eigen::Index speaker, Eigen::Index bus,
                    bool more, Complex* drives) {
    const LoudspeakerLoops loops = loudspeaker_loops(model, factors, speaker, bus);
    const Eigen::Index n = loops.mix.size();
    Eigen::Map<ComplexVector> ends(drives, n), divisor(drives + n + 1, more ? n : 0);
    ends =
        (loops.mix * (factors.r(speaker) + loops.others_rest) - loops.others * loops.mix_rest).cwiseProduct(factors.b);
    drives[n] = loops.mix_rest;
    if (!more) return;
    divisor = -loops.others.cwiseProduct(factors.b);
    drives[2 * n + 1] = 1.0;
}
}  // namespace

int position_of_input(const LoopModel& model, int input) {
    for (std::size_t i = 0; i < model.inputs().size(); ++i)
        if (model.inputs()[i].index == input) return static_cast<int>(i);
    return -1;
}

namespace {
/// Between two frequencies an eigenvalue may rise a little.
constexpr double kDoubtful = 0.9;

/// One octet of a feedback map; returns the largest bound of the others' eigenvalues.
double feedback_values(const Wiring& wiring, const LoopCurves& curves, std::size_t octet, std::size_t input,
                       bool bounded, Complex* drives) {
    thread_local LoopScratch scratch;
    thread_local Doubles values;
    alignas(64) double bounds[kOctet] = {};
    values.resize(wiring.speakers * 2 * kOctet);
    feedback_octet(wiring, curves, octet, input, scratch, values.data(), bounded ? bounds : nullptr);
    for (std::size_t i = 0; i < kOctet; ++i)
        for (std::size_t l = 0; l < wiring.speakers; ++l)
            drives[i * wiring.speakers + l] = {values[l * 2 * kOctet + i], values[l * 2 * kOctet + kOctet + i]};
    return *std::max_element(bounds, bounds + kOctet);
}
}  // namespace

DriveFunction feedback_drives(const LoopTable& table, int input, std::atomic<bool>& doubtful) {
    const auto in = static_cast<std::size_t>(input);
    DriveFunction function;
    function.ends = table.wiring().speakers;
    function.fine = [&table, in, &doubtful](std::size_t octet, Complex* drives) {
        if (feedback_values(table.wiring(), table.fine(), octet, in, true, drives) > kDoubtful) doubtful = true;
    };
    function.swept = [&table, in, &doubtful](std::size_t octet, Complex* drives) {
        if (feedback_values(table.wiring(), table.swept(), octet, in, true, drives) > kDoubtful) doubtful = true;
    };
    function.near = [&table, in](const Octet& octet, Complex* drives) {
        LoopTable::Near near;
        table.near(octet, near);
        feedback_values(table.wiring(), near.loops, 0, in, false, drives);
    };
    return function;
}

DriveFunction loudspeaker_drives(const LoopTable& table, int speaker, int bus) {
    DriveFunction function;
    function.ends = table.wiring().inputs;
    function.offset = true;
    function.divisor = carries_more(table.model(), speaker, bus);
    const auto at = [&table, speaker, bus, more = function.divisor](const LoopFactors& factors, Complex* drives) {
        loudspeaker_at(table.model(), factors, speaker, bus, more, drives);
    };
    function.fine = [&table, at, values = function.values()](std::size_t octet, Complex* drives) {
        for (std::size_t k = octet * kOctet, i = 0; i < kOctet; ++i, ++k)
            at(table.factors(table.fine(), fine_grid().hz[k], k), drives + i * values);
    };
    function.swept = [&table, at, values = function.values()](std::size_t octet, Complex* drives) {
        for (std::size_t k = octet * kOctet, i = 0; i < kOctet; ++i, ++k)
            at(table.factors(table.swept(), bin_hz(static_cast<int>(k)), k), drives + i * values);
    };
    function.near = [&table, at, values = function.values()](const Octet& octet, Complex* drives) {
        for (std::size_t i = 0; i < kOctet; ++i) at(table.model().factors(octet.hz(i)), drives + i * values);
    };
    return function;
}

}  // namespace howlmap::maps
