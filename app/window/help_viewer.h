// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

class QTextBrowser;

namespace howlmap::app {

/// The help pages that come with the program, in a window of their own.
class HelpViewer : public QWidget {
    Q_OBJECT
  public:
    explicit HelpViewer(QWidget* parent);

    /// Shows a page by name ("loops", "loops#waves"), the start page if there is no such one.
    void open(const QString& page);
    /// Address of a page in the user's language, English where there is none; empty if there is none at all.
    static QString address(const QString& page);

  private:
    QTextBrowser* browser_;
};

}  // namespace howlmap::app
