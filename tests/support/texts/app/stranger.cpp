// SPDX-License-Identifier: GPL-3.0-or-later
QString t(int n); void no() { t("not included here"); }
