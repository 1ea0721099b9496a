// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/loop_drives.h"

#include <Eigen/LU>

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

void feedback_at(const LoopModel& model, Eigen::Index input, double hz, Complex* drives) {
    const LoopFactors factors = model.factors(hz);
    const ComplexMatrix sound = speaker_drives(model, factors) * bus_drives(model, factors);  // loudspeakers x inputs
    Eigen::Map<ComplexVector> result(drives, sound.rows());
    result = sound.col(input);
    if (sound.cols() > 1) {
        const ComplexMatrix heard = without_row(factors.b.asDiagonal() * factors.h, input);  // others x loudspeakers
        const ComplexMatrix others = without_column(sound, input);
        result += others * one_minus(heard * others).partialPivLu().solve(heard * sound.col(input));
    }
    result *= factors.b(input);
}

void loudspeaker_at(const LoopModel& model, Eigen::Index speaker, Eigen::Index bus, double hz, Complex* drives) {
    const LoopFactors factors = model.factors(hz);
    const ComplexMatrix speakers = speaker_drives(model, factors), sends = bus_drives(model, factors);
    const ComplexMatrix heard = factors.b.asDiagonal() * factors.h;  // inputs x loudspeakers
    ComplexVector row = sends.row(bus).transpose();
    if (sends.rows() > 1) {
        const ComplexMatrix loops = heard * without_column(speakers, bus) * without_row(sends, bus);
        row = one_minus(loops).transpose().partialPivLu().solve(row).eval();
    }
    Eigen::Map<ComplexVector> result(drives, row.size());
    result = row.cwiseProduct(factors.b) * factors.r(speaker);
    ComplexVector rest = speakers.col(bus);
    rest(speaker) = 0.0;
    drives[row.size()] = (row.transpose() * (heard * rest))(0);
}
}  // namespace

int position_of_input(const LoopModel& model, int input) {
    for (std::size_t i = 0; i < model.inputs().size(); ++i)
        if (model.inputs()[i].index == input) return static_cast<int>(i);
    return -1;
}

DriveFunction feedback_drives(const LoopModel& model, int input) {
    DriveFunction function;
    function.ends = model.speakers().size();
    function.at = [&model, input](double hz, Complex* drives) { feedback_at(model, input, hz, drives); };
    return function;
}

DriveFunction loudspeaker_drives(const LoopModel& model, int speaker, int bus) {
    DriveFunction function;
    function.ends = model.inputs().size();
    function.offset = true;
    function.at = [&model, speaker, bus](double hz, Complex* drives) {
        loudspeaker_at(model, speaker, bus, hz, drives);
    };
    return function;
}

}  // namespace howlmap::maps
