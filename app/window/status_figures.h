// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

class QLabel;
class QProgressBar;
class QStatusBar;

namespace howlmap::app {

class AnalysisService;
class Document;

/// What the status bar always shows: the margin to count on (larger), the margin as drawn, the first ring and who makes
/// it, how far the draws are.
class StatusFigures : public QWidget {
    Q_OBJECT
  public:
    StatusFigures(Document& document, AnalysisService& analysis, QWidget* parent);

  private:
    void refresh();
    void refresh_margins();
    void refresh_ring();
    QString ring_tip() const;

    Document& document_;
    AnalysisService& analysis_;
    QLabel *ring_, *drawn_, *counted_;
    QProgressBar* progress_;
};

}  // namespace howlmap::app
