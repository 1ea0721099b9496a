// SPDX-License-Identifier: GPL-3.0-or-later
// The lists that a venue's engineer patches and rings out from.
#pragma once
#include <string>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/report/table.h"
#include "core/show/show.h"

namespace howlmap::report {

/// Channel, source, transducer, stand, 48 V, DI, who, notes (with polarity, high-pass and equaliser as set); by
/// channel.
Table input_list(const Show& show);

/// Notes on players, loudspeakers and backline: what, which, note. No rows where nobody wrote one.
Table notes_list(const Show& show);

/// One send in words: how much of it the player wants, against the strongest send of the mix.
struct SendLine {
    std::string input;  ///< name
    int channel = 0;
    double level_db = 0.0;
    std::string amount;  ///< "most", "strong", "medium", "a little"
};

/// A monitor mix as the engineer builds it.
struct MixSheet {
    const Mix* mix = nullptr;           ///< into the show that was given
    std::vector<std::string> who;       ///< names of the players who hear it
    std::vector<std::string> outlets;   ///< "wedge 1 (wedge)", "in-ears of Ada"
    std::vector<SendLine> sends;        ///< strongest first
    std::vector<std::string> settings;  ///< polarity, high-pass, notches, delay, as set
};
/// By mix number. The show must outlive the result.
std::vector<MixSheet> mix_sheets(const Show& show);
/// The same as one table: mix, for whom, outlets, input, level, amount.
Table mix_list(const Show& show);
/// Sends as a matrix: a row an input, a column a mix, cells in dB.
Table send_matrix(const Show& show);
/// Bands in the order in which they are likely to ring first: band, where in it, probability, the loop that most likely
/// makes it, what is cut there now in each mix.
Table ring_out_list(const Show& show, const std::vector<BandProbability>& bands);
/// What was heard and done at the soundcheck, as logged.
Table soundcheck_list(const Show& show);

/// A list with the name of its file.
struct NamedTable {
    std::string file;  ///< "inputs.csv"
    Table table;
};
/// Inputs, mixes, sends; notes, the ring-out list and the soundcheck's log where there are any.
std::vector<NamedTable> all_lists(const Show& show, const std::vector<BandProbability>& ring_out);

}  // namespace howlmap::report
