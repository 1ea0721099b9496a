// SPDX-License-Identifier: GPL-3.0-or-later
// What this process holds.
#pragma once

namespace howlmap::test {

/// Memory that is resident, KiB: with what the C library keeps for later and what programs share.
long resident_kib();
/// Memory that was asked for and not given back, KiB; 0 where the C library does not tell, as under sanitizers.
long live_kib();
long open_files();

}  // namespace howlmap::test
