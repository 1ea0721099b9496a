// SPDX-License-Identifier: GPL-3.0-or-later
// Empty: carries the precompiled headers that the test programs share.
