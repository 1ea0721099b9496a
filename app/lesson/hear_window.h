// SPDX-License-Identifier: GPL-3.0-or-later
// The loops of the whole stage, to hear: through the sound device, or into a file.
#pragma once
#include <QWidget>
#include <vector>

#include "app/document/worker.h"
#include "app/lesson/sound_bar.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace howlmap::app {

class AnalysisService;
class Document;

class HearWindow : public QWidget {
    Q_OBJECT
  public:
    HearWindow(Document& document, AnalysisService& analysis, QWidget* parent);
    /// A recording as the source; says so where it can not be read.
    void use_recording(const QString& path);
    /// Writes what would be heard.
    void write(const QString& path);

  private:
    SoundBar::Wish wish() const;
    void refresh();
    void fill_inputs();
    void choose_source(int index);
    void ask_and_write();
    void set_writing(bool writing);
    void allow_writing();

    Document& document_;
    AnalysisService& analysis_;
    QComboBox *source_, *input_;
    QLabel *margin_, *words_;
    QPushButton *write_, *cancel_;
    QProgressBar* progress_;
    SoundBar* sound_;
    std::vector<float> recording_;
    bool writing_ = false;
    Worker worker_, reader_;
};

}  // namespace howlmap::app
