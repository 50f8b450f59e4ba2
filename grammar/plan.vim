" Colouring of season plans (*.plan), written from the words the program declares.
" Do not mend it by hand: python -m plantframe.language.colouring
"
" Put it into your editor's folder for syntax files as plan.vim, and let files named *.plan have
" the type plan:  autocmd BufRead,BufNewFile *.plan setfiletype plan
if exists("b:current_syntax")
  finish
endif
syntax case ignore
syntax match planBlock /^\%(variety\|border\|garden\|cover\|diary\|fence\|frame\|hedge\|house\|notes\|store\|to-do\|wants\|line\|note\|path\|read\|shed\|sort\|task\|todo\|tree\|wall\|want\|wish\|yard\|bed\|job\|log\)\>/ nextgroup=planName skipwhite
syntax match planName /[^ ,(][^,(]*/ contained
syntax match planFact /^\s\+\zs\%(cane\s\+along\s\+the\s\+top\|no\s\+lines\s\+overhead\|no\s\+overhead\s\+lines\|feet\s\+coated\s\+with\|no\s\+overhead\s\+line\|services\s\+marked\|stood\s\+before\s\+in\|vents\s\+opened\s\+by\|lattice\s\+strips\|overhead\s\+lines\|pairs\s\+of\s\+poles\|standing\s\+since\|vent\s\+opened\s\+by\|lattice\s\+strip\|overhead\s\+line\|pair\s\+of\s\+poles\|cover\s\+fabric\|frame\s\+sticks\|lines\s\+marked\|off\s\+the\s\+wall\|panel\s\+sticks\|preservative\|stands\s\+since\|treated\s\+with\|also\s\+called\|cross\s\+laths\|first\s\+frost\|foot\s\+strips\|front\s\+board\|frost\s\+depth\|normal\s\+high\|shade\s\+cloth\|back\s\+board\|carried\s\+by\|cover\s\+film\|cross\s\+lath\|ends\s\+posts\|foot\s\+posts\|free\s\+hours\|last\s\+frost\|moved\s\+from\|normal\s\+low\|own\s\+design\|previously\|ridge\s\+cane\|ridge\s\+pole\|stands\s\+for\|stands\s\+off\|wanted\s\+for\|came\s\+from\|clad\s\+with\|end\s\+posts\|foot\s\+post\|free\s\+time\|gateposts\|high\s\+side\|household\|opened\s\+by\|picked\s\+by\|plant\s\+out\|poisonous\|polythene\|take\s\+down\|built\s\+by\|children\|gatepost\|headroom\|location\|low\s\+side\|overhang\|ready\s\+by\|stays\s\+up\|stood\s\+in\|takedown\|top\s\+rail\|training\|uprights\|air\s\+gap\|battens\|clad\s\+in\|gutters\|hurdles\|made\s\+of\|netting\|on\s\+from\|painted\|pillars\|planted\|propped\|rafters\|set\s\+out\|spacing\|stained\|strings\|surface\|top\s\+bar\|upright\|across\|batten\|braces\|called\|circle\|coated\|fabric\|facing\|finish\|fleece\|frosts\|gutter\|height\|hinged\|hinges\|hurdle\|length\|lights\|panels\|pegged\|people\|person\|picked\|pieces\|pillar\|poison\|put\s\+up\|raised\|region\|sashes\|screws\|spaced\|stakes\|stands\|sticks\|storms\|string\|strips\|tender\|timber\|weighs\|yields\|apart\|beams\|brace\|built\|canes\|chain\|child\|cloth\|cover\|eaves\|faces\|front\|frost\|fruit\|grips\|grows\|hardy\|hinge\|hooks\|hoops\|hours\|laths\|light\|moved\|nails\|panel\|piece\|place\|plant\|poles\|posts\|power\|props\|prune\|rails\|rains\|ready\|ridge\|rungs\|screw\|sheet\|sides\|slats\|stake\|stays\|stick\|strip\|tools\|train\|twigs\|twine\|up\s\+by\|vents\|where\|width\|wires\|also\|away\|back\|bars\|bays\|beam\|cane\|cats\|coat\|crop\|dogs\|done\|ends\|feet\|film\|free\|from\|grew\|grow\|guys\|high\|hook\|hoop\|kerf\|kids\|lath\|legs\|like\|long\|mesh\|move\|path\|pegs\|pets\|pins\|pole\|post\|prop\|rail\|ribs\|ring\|roof\|rung\|runs\|sash\|size\|skip\|soil\|sown\|stay\|step\|tied\|ties\|twig\|vent\|wide\|wind\|wire\|wood\|bar\|bay\|cat\|dog\|gap\|had\|kid\|leg\|net\|peg\|pin\|rib\|sow\|sun\|tie\|ok\|on\)\>/
syntax match planMonth /\<\%(september\|december\|february\|november\|january\|october\|august\|april\|march\|july\|june\|sept\|apr\|aug\|dec\|feb\|jan\|jul\|jun\|mar\|may\|nov\|oct\|sep\)\>/
syntax match planFigure /\<\d[0-9.,½¼¾⅛⅜⅝⅞\/-]*\%(\s\?\%(centimeters\|centimetres\|millimeters\|millimetres\|centimeter\|centimetre\|fortnights\|millimeter\|millimetre\|fortnight\|kilograms\|kilogram\|degrees\|minutes\|inches\|liters\|litres\|meters\|metres\|minute\|months\|ounces\|pounds\|gauge\|grams\|hours\|kilos\|liter\|litre\|meter\|metre\|month\|ounce\|pound\|weeks\|yards\|years\|days\|feet\|foot\|gram\|hour\|inch\|kilo\|mins\|week\|yard\|year\|awg\|day\|hrs\|kgs\|lbs\|min\|mph\|swg\|wks\|yds\|yrs\|cm\|ft\|hr\|in\|kg\|km\|lb\|mm\|oz\|wk\|yd\|yr\|C\|N\|c\|g\|h\|l\|m\|n\)\)\?\>/
syntax match planFigure /\<\d\+x\d\+\%(x\d\+\)\?\>/
syntax region planCultivar start=/\%(^\|[ ,]\)\zs['‘]\a/ end=/['’]\ze\%([ ,]\|$\)/ oneline
syntax region planReason start=/\%(^\|[ ,]\)\zs["“]/ end=/["”]/ oneline
syntax match planRemark /^\s*(.*$/
syntax match planRemark /([^()]*)/
highlight default link planBlock Statement
highlight default link planName Identifier
highlight default link planFact Keyword
highlight default link planRemark Comment
highlight default link planCultivar String
highlight default link planReason String
highlight default link planFigure Number
highlight default link planMonth Constant
let b:current_syntax = "plan"
